/**
 * Whether the last cell of a file without a last line end was cut off in the middle of its number: it ends in a mark or sign, or
 * has fewer places than all the cells above it, which have equally many.
 */
export function isCutShort(last: string, above: readonly string[]): boolean {
  if (/[\d.,][.,eE+-]$|^[+-]$/.test(last)) return true;
  const places = above.map(countPlaces);
  const fixed = places[0];
  return fixed !== undefined && fixed > 0 && places.every((count) => count === fixed) && countPlaces(last) < fixed;
}

/** Characters behind the decimal mark, an exponent among them. */
function countPlaces(cell: string): number {
  const mark = cell.search(/[.,](?=\d)/);
  return mark < 0 ? 0 : cell.length - mark - 1;
}

export const ROWS_COMPARED = 8; // rows above the last one that show how many places the numbers have; house choice
