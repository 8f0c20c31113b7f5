/** Slope and value at `x0` of the straight line that fits best, all points weighing the same. */
export interface Line {
  readonly slope: number;
  readonly atX0: number;
}

/**
 * Least squares of y over x. Null for fewer than two different x. Source: JCGM 100:2008, H.3.2, equations (H.13a) and (H.13b).
 */
export function lineThrough(points: readonly { readonly x: number; readonly y: number }[], x0 = 0): Line | null {
  const n = points.length;
  if (n < 2) return null;
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / n;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / n;
  const sxx = points.reduce((sum, { x }) => sum + (x - meanX) * (x - meanX), 0);
  if (sxx === 0) return null;
  const slope = points.reduce((sum, { x, y }) => sum + (x - meanX) * (y - meanY), 0) / sxx;
  return { slope, atX0: meanY + slope * (x0 - meanX) };
}
