import type { Readings } from './bin-readings.ts';
import type { Shape } from './heating-model.ts';

/** Time constants tried, in spans of the log. A body much faster than the log looks settled, one much slower looks like a straight line. */
const FASTEST = 0.01;
const SLOWEST = 20;
const STEPS: Readonly<Record<Shape, number>> = { one: 32, two: 14 };
const LEAST_PIVOT = 1e-12; // of a normal equation with ones on its diagonal: below it the columns are one and the same

/** For every time constant (or pair) on a grid the heights follow by linear least squares; the best of all is where the fit starts. */
export function startValues(scaled: Readings, shape: Shape): { parameters: number[]; error: number } {
  const grid = Array.from({ length: STEPS[shape] }, (_, i) => Math.log(FASTEST) + (i / (STEPS[shape] - 1)) * Math.log(SLOWEST / FASTEST));
  const decays = grid.map((l) => scaled.t.map((x) => Math.exp(-x * Math.exp(-l))));
  let best: { parameters: number[]; error: number } | null = null;
  const consider = (columns: readonly Float64Array[], parametersOf: (heights: readonly number[]) => number[]): void => {
    const solved = linearFit(scaled, columns);
    if (solved !== null && (best === null || solved.error < best.error))
      best = { parameters: parametersOf(solved.heights), error: solved.error };
  };
  for (const [slow, decay] of decays.entries()) {
    if (shape === 'one') consider([decay], ([e = 0, d = 0]) => [e, -d, grid[slow]!]);
    else
      for (let fast = 0; fast < slow; fast += 1)
        consider([decay, decays[fast]!], ([e = 0, d = 0, d2 = 0]) => [e, -d, grid[slow]!, -d2, grid[fast]!]);
  }
  return best ?? { parameters: shape === 'one' ? [0, 0, 0] : [0, 0, 0, 0, -1], error: Number.POSITIVE_INFINITY };
}

/** Weighted least squares of y on 1 and the columns. */
function linearFit({ y, count }: Readings, columns: readonly Float64Array[]): { heights: number[]; error: number } | null {
  const size = columns.length + 1;
  const matrix = Array.from({ length: size }, () => new Float64Array(size + 1));
  let squares = 0;
  const row = new Float64Array(size + 1);
  for (let i = 0; i < y.length; i += 1) {
    const weight = count[i]!;
    row[0] = 1;
    for (let k = 1; k < size; k += 1) row[k] = columns[k - 1]![i]!;
    row[size] = y[i]!;
    squares += weight * y[i]! * y[i]!;
    for (let a = 0; a < size; a += 1) for (let b = a; b <= size; b += 1) matrix[a]![b]! += weight * row[a]! * row[b]!;
  }
  const right = matrix.map((line) => line[size]!);
  const heights = solveSymmetric(matrix, size);
  if (heights === null) return null;
  return { heights, error: Math.max(0, squares - heights.reduce((sum, height, k) => sum + height * right[k]!, 0)) };
}

/** Gauss elimination on the upper half of a symmetric positive matrix with its right side; null when it is singular. */
function solveSymmetric(matrix: Float64Array[], size: number): number[] | null {
  const diagonal = matrix.map((line, k) => line[k]!);
  for (let k = 0; k < size; k += 1) {
    const pivot = matrix[k]![k]!;
    if (!(pivot > LEAST_PIVOT * diagonal[k]!)) return null;
    for (let a = k + 1; a < size; a += 1) {
      const factor = matrix[k]![a]! / pivot;
      for (let b = a; b <= size; b += 1) matrix[a]![b]! -= factor * matrix[k]![b]!;
    }
  }
  const heights = new Array<number>(size).fill(0);
  for (let k = size - 1; k >= 0; k -= 1) {
    let rest = matrix[k]![size]!;
    for (let b = k + 1; b < size; b += 1) rest -= matrix[k]![b]! * heights[b]!;
    heights[k] = rest / matrix[k]![k]!;
  }
  return heights;
}
