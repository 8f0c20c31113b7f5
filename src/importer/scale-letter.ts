import { isNumberLike } from './cell-kind.ts';

/** Letters that scale a number and are no unit by themselves. Small m is left out: it is a metre as often as a thousandth. */
const LETTERS: Readonly<Record<string, number>> = { k: 3, M: 6, G: 9, µ: -6, μ: -6, u: -6, n: -9 };
const SCALED = /^([+\-−]?(?:\d[\d.,]*|[.,]\d+)) ?([kMGµμun])$/;
const LONGEST = 24; // characters; longer cells are words

/** A number with a letter for a power of ten behind it and no unit: "1.5k". */
export function findScaled(cell: string): { readonly number: string; readonly power: number } | null {
  if (cell.length > LONGEST) return null;
  const parts = SCALED.exec(cell);
  return parts === null || !isNumberLike(parts[1]!) ? null : { number: parts[1]!, power: LETTERS[parts[2]!]! };
}
