import { type Refusal, refuse } from '../../core/quantity/refusal.ts';

/** Pixels of a picture, right and down. */
export type Point = readonly [number, number];

/** A point of one picture and the same thing on another. */
export interface PointPair {
  readonly from: Point;
  readonly to: Point;
}

/** Rows of a 3 × 3 matrix on homogeneous coordinates. */
type Rows = readonly [Row, Row, Row];
type Row = readonly [number, number, number];

/** One flat picture laid on another. */
export interface Alignment {
  readonly rows: Rows;
}

const FEWEST = 3;
const MOST = 4;
const LEAST_AREA = 1e-3; // of the square over the points: three marks flatter than that are as good as on one line

/**
 * Lays one flat picture on another by points that show the same things: three give an affine map (parallels stay parallel), four a projective
 * one (a board photographed at a slant); mirroring included. Refuses other numbers of points and three that lie on one line.
 * Source: common practice, the four-point plane homography; built from the projective basis of the four points, so nothing is iterated.
 */
export function alignByPoints(pairs: readonly PointPair[]): Alignment | Refusal {
  if (pairs.length < FEWEST || pairs.length > MOST) return refuse('points-to-align', String(pairs.length), 'three or four pairs of points');
  const from = basisOf(pairs.map((pair) => pair.from));
  const to = basisOf(pairs.map((pair) => pair.to));
  if (from === null || to === null) return refuse('points-in-line', '', 'points of which no three lie on one line');
  return { rows: normalised(product(to, adjugate(from))) };
}

/** Where a point of the first picture lies on the second. */
export function moveAcross({ rows: [a, b, c] }: Alignment, [x, y]: Point): Point {
  const w = c[0] * x + c[1] * y + c[2];
  return [(a[0] * x + a[1] * y + a[2]) / w, (b[0] * x + b[1] * y + b[2]) / w];
}

/** The way back: the second picture on the first. */
export function turnRound({ rows }: Alignment): Alignment {
  return { rows: normalised(adjugate(rows)) };
}

/** The alignment as the value of a CSS `transform` with its origin at the upper left corner. */
export function toCssTransform({ rows: [a, b, c] }: Alignment): string {
  return `matrix3d(${[a[0], b[0], 0, c[0], a[1], b[1], 0, c[1], 0, 0, 1, 0, a[2], b[2], 0, c[2]].join(',')})`;
}

/** Maps the corners (1,0,0), (0,1,0), (0,0,1) and (1,1,1) to the points; of three points the fourth completes a parallelogram. */
function basisOf(points: readonly Point[]): Rows | null {
  const [p, q, r] = points;
  if (p === undefined || q === undefined || r === undefined) return null;
  const s: Point = points[FEWEST] ?? [q[0] + r[0] - p[0], q[1] + r[1] - p[1]];
  const all = [p, q, r, s];
  const extent = Math.max(...[0, 1].map((axis) => spread(all.map((point) => point[axis === 0 ? 0 : 1]))));
  const flat = LEAST_AREA * extent * extent;
  if ([area(p, q, r), area(p, q, s), area(p, r, s), area(q, r, s)].some((each) => !(Math.abs(each) > flat))) return null;
  const [u, v, w] = [area(s, q, r), area(p, s, r), area(p, q, s)];
  return [
    [p[0] * u, q[0] * v, r[0] * w],
    [p[1] * u, q[1] * v, r[1] * w],
    [u, v, w],
  ];
}

/** Twice the signed area of a triangle. */
function area(p: Point, q: Point, r: Point): number {
  return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
}

function spread(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}

/** The inverse but for a factor, which homogeneous coordinates do not see. */
function adjugate([a, b, c]: Rows): Rows {
  return [
    [b[1] * c[2] - b[2] * c[1], a[2] * c[1] - a[1] * c[2], a[1] * b[2] - a[2] * b[1]],
    [b[2] * c[0] - b[0] * c[2], a[0] * c[2] - a[2] * c[0], a[2] * b[0] - a[0] * b[2]],
    [b[0] * c[1] - b[1] * c[0], a[1] * c[0] - a[0] * c[1], a[0] * b[1] - a[1] * b[0]],
  ];
}

function product(left: Rows, right: Rows): Rows {
  const row = (a: Row): Row => {
    const column = (k: 0 | 1 | 2): number => a[0] * right[0][k] + a[1] * right[1][k] + a[2] * right[2][k];
    return [column(0), column(1), column(2)];
  };
  return [row(left[0]), row(left[1]), row(left[2])];
}

function normalised(rows: Rows): Rows {
  const scale = rows[2][2];
  if (scale === 0) return rows;
  const row = (a: Row): Row => [a[0] / scale, a[1] / scale, a[2] / scale];
  return [row(rows[0]), row(rows[1]), row(rows[2])];
}
