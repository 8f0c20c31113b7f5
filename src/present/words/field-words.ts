/** What the lists of a case hold, one of them. */
const ONE_OF: Readonly<Record<string, string>> = {
  exhibits: 'exhibit',
  parts: 'part',
  ports: 'port',
  levels: 'level',
  places: 'place',
  days: 'day',
  rows: 'row',
  columns: 'column',
  conductors: 'conductor',
  instruments: 'instrument',
};
/** Members that only hold others and say nothing to a reader. */
const SILENT: readonly string[] = ['table', 'under'];

/** "/exhibits/sweep-1/table/columns/v/3" as "exhibit sweep-1, column v, row 4": lists are counted from one, as on the bench. */
export function fieldText(path: string): string {
  if (!path.startsWith('/')) return path;
  const segments = path.split('/').slice(1);
  const words: string[] = [];
  for (let index = 0; index < segments.length; index += 1) {
    const segment = segments[index] ?? '';
    const kind = Object.hasOwn(ONE_OF, segment) ? ONE_OF[segment] : undefined;
    const next = segments[index + 1];
    if (kind !== undefined && next !== undefined) {
      words.push(`${kind} ${next}`);
      index += 1;
    } else if (/^\d+$/.test(segment)) words.push(`row ${Number(segment) + 1}`);
    else if (!SILENT.includes(segment))
      words.push(segment.replace(/([a-z])([A-Z])/g, (_whole, before: string, after: string) => `${before} ${after.toLowerCase()}`));
  }
  return words.join(', ');
}
