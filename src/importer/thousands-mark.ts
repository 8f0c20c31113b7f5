/** Groups of three set off by an apostrophe, straight or curled: "1'234.5". Nothing else is written so, and it stands for nothing else. */
const GROUPED = /^[+\-−]?[1-9]\d{0,2}(?:['’]\d{3})+(?:[.,]\d+)?$/;

/** The number without its apostrophes, or null when it is no number written so. */
export function findGroupedByApostrophe(cell: string): string | null {
  return (cell.includes("'") || cell.includes('’')) && GROUPED.test(cell) ? cell.replace(/['’]/g, '') : null;
}
