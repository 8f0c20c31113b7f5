import type { ReadTable } from '../bench/bench.ts';

type Point = readonly [x: number, y: number];

/** What lies inside an outline, in the numbers of the file. Pixels count from 0 at the top left. */
export interface RegionPixels {
  readonly count: number;
  /** Pixels inside that hold no number. */
  readonly without: number;
  readonly hottest: { readonly x: number; readonly y: number; readonly value: number };
  readonly mean: number;
}

const HALF = 0.5; // a pixel is inside when its middle is
const FEWEST_CORNERS = 3;

/** Null where no pixel with a number has its middle inside. */
export function regionPixels(points: readonly Point[], { rows, columns }: Pick<ReadTable, 'rows' | 'columns'>): RegionPixels | null {
  if (points.length < FEWEST_CORNERS) return null;
  const reach = (axis: 0 | 1, most: number): [number, number] => {
    const all = points.map((point) => point[axis]);
    return [Math.max(0, Math.floor(Math.min(...all))), Math.min(most, Math.ceil(Math.max(...all)))];
  };
  const [fromX, toX] = reach(0, columns.length);
  const [fromY, toY] = reach(1, rows);
  let [count, without, mean] = [0, 0, 0];
  let hottest: RegionPixels['hottest'] | null = null;
  for (let y = fromY; y < toY; y += 1)
    for (let x = fromX; x < toX; x += 1) {
      if (!isInside(points, x + HALF, y + HALF)) continue;
      const value = columns[x]!.values[y]!;
      if (!Number.isFinite(value)) {
        without += 1;
        continue;
      }
      count += 1;
      mean += (value - mean) / count;
      if (hottest === null || value > hottest.value) hottest = { x, y, value };
    }
  return hottest === null ? null : { count, without, hottest, mean };
}

/** Even and odd crossings of a ray to the right. */
export function isInside(points: readonly Point[], x: number, y: number): boolean {
  let inside = false;
  for (const [index, [x1, y1]] of points.entries()) {
    const [x2, y2] = points[(index + 1) % points.length]!;
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) * (x2 - x1)) / (y2 - y1)) inside = !inside;
  }
  return inside;
}
