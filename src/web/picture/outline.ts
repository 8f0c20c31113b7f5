/** Pixels of the picture, right and down. */
export type Point = readonly [x: number, y: number];
export type Drawn = 'rectangle' | 'ellipse' | 'polygon';

const ROUND = 32; // corners of an ellipse: within 0.5 % of its area
const TENTHS = 10;
const LEAST = 1; // pixel, so that a region never vanishes

/** The outline of a shape between two opposite corners of its box. */
export function outlineBetween(drawn: 'rectangle' | 'ellipse', [x1, y1]: Point, [x2, y2]: Point): Point[] {
  if (drawn === 'rectangle')
    return [
      [x1, y1],
      [x2, y1],
      [x2, y2],
      [x1, y2],
    ].map(rounded);
  const [cx, cy, rx, ry] = [(x1 + x2) / 2, (y1 + y2) / 2, Math.abs(x2 - x1) / 2, Math.abs(y2 - y1) / 2];
  return Array.from({ length: ROUND }, (_, k) => {
    const angle = (2 * Math.PI * k) / ROUND;
    return rounded([cx + rx * Math.cos(angle), cy + ry * Math.sin(angle)]);
  });
}

export function boxOf(points: readonly Point[]): { readonly from: Point; readonly to: Point } {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { from: [Math.min(...xs), Math.min(...ys)], to: [Math.max(...xs), Math.max(...ys)] };
}

/** What can be taken hold of: the corners of the box of a rectangle or an ellipse, every corner of an outline. */
export function handlesOf(drawn: Drawn, points: readonly Point[]): readonly Point[] {
  if (drawn === 'polygon') return points;
  const { from, to } = boxOf(points);
  return [from, [to[0], from[1]], to, [from[0], to[1]]];
}

/** The outline with one handle moved to a place. */
export function withHandle(drawn: Drawn, points: readonly Point[], handle: number, to: Point): Point[] {
  if (drawn === 'polygon') return points.map((point, k) => (k === handle ? rounded(to) : point));
  const across = handlesOf(drawn, points)[(handle + 2) % 4] ?? to;
  const apart = (own: number, other: number): number => (Math.abs(own - other) < LEAST ? other + (own < other ? -LEAST : LEAST) : own);
  return outlineBetween(drawn, across, [apart(to[0], across[0]), apart(to[1], across[1])]);
}

/** The outline moved as a whole, no farther than the edges of the picture. */
export function movedBy(points: readonly Point[], [dx, dy]: Point, { width, height }: { width: number; height: number }): Point[] {
  const { from, to } = boxOf(points);
  const x = Math.min(width - to[0], Math.max(-from[0], dx));
  const y = Math.min(height - to[1], Math.max(-from[1], dy));
  return points.map(([px, py]) => rounded([px + x, py + y]));
}

export function rounded([x, y]: readonly number[]): Point {
  return [Math.round((x ?? 0) * TENTHS) / TENTHS, Math.round((y ?? 0) * TENTHS) / TENTHS];
}

const ARROWS: Readonly<Record<string, Point>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
const FAR = 10; // pixels with Shift

/** The step that an arrow key means, in pixels; null for any other key. */
export function stepOf(event: { readonly key: string; readonly shiftKey: boolean }): Point | null {
  const arrow = ARROWS[event.key];
  if (arrow === undefined) return null;
  const times = event.shiftKey ? FAR : 1;
  return [arrow[0] * times, arrow[1] * times];
}
