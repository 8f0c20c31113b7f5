const DIGITS = 36;
const LENGTH = 6;

/** An id for an item that is made here: never used before, so that two tabs do not meet. */
export function newItemId(prefix: string): string {
  const random = crypto.getRandomValues(new Uint32Array(2));
  const tail = Array.from(random, (part) => part.toString(DIGITS))
    .join('')
    .slice(0, LENGTH);
  return `${prefix}-${tail}`;
}

/** "Output minus" as an id, with a number when it is taken. */
export function idFromName(name: string, taken: readonly string[]): string {
  const MOST = 34;
  const slug =
    name
      .toLowerCase()
      .normalize('NFKD')
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, MOST) || 'item';
  if (!taken.includes(slug)) return slug;
  for (let number = 2; ; number += 1) if (!taken.includes(`${slug}-${number}`)) return `${slug}-${number}`;
}

/** "#step-load_2f_held" back to "load/held": the anchors of finished markup lead into the page. */
export function idFromAnchor(anchor: string): string {
  const HEXADECIMAL = 16;
  return anchor
    .replace(/^#?(?:step|finding|source|part)-/, '')
    .replace(/_([0-9a-f]+)_/g, (_whole, code: string) => String.fromCodePoint(Number.parseInt(code, HEXADECIMAL)));
}
