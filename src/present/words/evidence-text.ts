import { fieldText } from './field-words.ts';

const MOST_FIELDS = 2; // of one exhibit, named one by one

/** Fields of the case, those of one exhibit together: a finding of a whole sweep would otherwise name every cell. */
export function evidenceText(fields: readonly string[], words: (field: string) => string = fieldText): string {
  const groups = new Map<string, string[]>();
  for (const field of fields) {
    const home = /^\/exhibits\/[^/]+/.exec(field)?.[0] ?? field;
    groups.set(home, [...(groups.get(home) ?? []), field]);
  }
  return [...groups]
    .map(([home, own]) => (own.length <= MOST_FIELDS ? own.map(words).join('; ') : `${fieldText(home)}, ${own.length} values`))
    .join('; ');
}
