import type { Point } from './geometry.ts';

/** Where a case keeps the places of parts that were moved by hand: with the screen, outside of what is judged and hashed. */
export const HAND_MOVES_KEY = 'schematic-by-hand';

/** Corners of symbols by part, as `layOutSchematic` takes them. What cannot be read counts as nothing moved. */
export function parseHandMoves(text: string | undefined): ReadonlyMap<string, Point> {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? '{}');
  } catch {
    return new Map();
  }
  if (typeof kept !== 'object' || kept === null) return new Map();
  return new Map(
    Object.entries(kept).flatMap(([part, at]: [string, unknown]) => {
      const [x, y] = Array.isArray(at) ? (at as unknown[]) : [];
      return isPlace(x) && isPlace(y) ? [[part, { x, y }] as const] : [];
    }),
  );
}

export function toHandMovesText(moves: ReadonlyMap<string, Point>): string {
  return JSON.stringify(Object.fromEntries([...moves].map(([part, { x, y }]) => [part, [Math.round(x), Math.round(y)]])));
}

const FARTHEST = 6000; // px: a page three times as wide as that of a board of 45 parts

function isPlace(value: unknown): value is number {
  return typeof value === 'number' && Math.abs(value) <= FARTHEST;
}
