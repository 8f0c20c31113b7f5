import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestThatWay } from '../../src/web/circuit/nearest-that-way.ts';
import { fitView, panBy, toContent, toWindow, zoomAt } from '../../src/web/stage/stage-view.ts';
import { shortestTree } from '../../src/web/trace/shortest-tree.ts';
import { SEED } from '../property/seed.ts';

const at = fc.record({ x: fc.integer({ min: -500, max: 500 }), y: fc.integer({ min: -500, max: 500 }) });
const WINDOW = { width: 400, height: 300 };
const PICTURE = { width: 2000, height: 900 };

describe('a window on a picture', () => {
  it('keeps what is pointed at where it is while it zooms, and finds its way back from the window to the picture', () => {
    fc.assert(
      fc.property(at, at, fc.double({ min: 0.3, max: 3, noNaN: true }), (corner, point, factor) => {
        const view = { ...corner, scale: 0.5 };
        const zoomed = zoomAt(view, factor, point);
        const [before, after] = [toContent(view, point), toContent(zoomed, point)];
        expect(after.x).toBeCloseTo(before.x, 6);
        expect(after.y).toBeCloseTo(before.y, 6);
        expect(toWindow(zoomed, after).x).toBeCloseTo(point.x, 6);
      }),
      { seed: SEED },
    );
  });

  it('shows all of a large picture, a small one as large as it is, and no less than it is told to', () => {
    expect(fitView(PICTURE, WINDOW)).toEqual({ x: 0, y: 60, scale: 0.2 });
    expect(fitView({ width: 100, height: 100 }, WINDOW)).toEqual({ x: 150, y: 100, scale: 1 });
    expect(fitView(PICTURE, WINDOW, 0.6).scale).toBe(0.6);
  });

  it('never loses the picture, however far it is pushed', () => {
    fc.assert(
      fc.property(at, fc.integer({ min: -9000, max: 9000 }), fc.integer({ min: -9000, max: 9000 }), (corner, x, y) => {
        const view = panBy({ ...corner, scale: 0.4 }, { x, y }, PICTURE, WINDOW);
        expect(view.x).toBeLessThan(WINDOW.width);
        expect(view.x + PICTURE.width * view.scale).toBeGreaterThan(0);
        expect(view.y).toBeLessThan(WINDOW.height);
        expect(view.y + PICTURE.height * view.scale).toBeGreaterThan(0);
      }),
      { seed: SEED },
    );
  });
});

describe('the lines of a net', () => {
  it('join all of its pads, and no other tree over four of them is shorter', () => {
    const long = (lines: readonly (readonly [{ x: number; y: number }, { x: number; y: number }])[]): number =>
      lines.reduce((sum, [from, to]) => sum + Math.hypot(from.x - to.x, from.y - to.y), 0);
    fc.assert(
      fc.property(fc.uniqueArray(at, { minLength: 4, maxLength: 4, selector: ({ x, y }) => `${x} ${y}` }), (points) => {
        const lines = shortestTree(points);
        expect(lines).toHaveLength(3);
        const pairs = points.flatMap((one, index) => points.slice(index + 1).map((two) => [one, two] as const));
        for (let mask = 0; mask < 2 ** pairs.length; mask += 1) {
          const tree = pairs.filter((_, bit) => (mask >> bit) % 2 === 1);
          if (tree.length === 3 && joins(points, tree)) expect(long(lines)).toBeLessThanOrEqual(long(tree) + 1e-9);
        }
      }),
      { seed: SEED, numRuns: 40 },
    );
    expect(shortestTree([])).toEqual([]);
  });
});

function joins<T extends object>(points: readonly T[], lines: readonly (readonly [T, T])[]): boolean {
  const reached = new Set([points[0]!]);
  for (let round = 0; round < points.length; round += 1)
    for (const [from, to] of lines) if (reached.has(from) || reached.has(to)) reached.add(from).add(to);
  return reached.size === points.length;
}

describe('the arrow keys in a drawing', () => {
  const places = [
    { part: 'here', at: { x: 100, y: 100 } },
    { part: 'right', at: { x: 180, y: 110 } },
    { part: 'far', at: { x: 300, y: 100 } },
    { part: 'below', at: { x: 110, y: 220 } },
    { part: 'aside', at: { x: 120, y: 400 } },
  ];
  it('lead to the nearest part that way, and nowhere where there is none', () => {
    expect(nearestThatWay(places, 'here', { x: 1, y: 0 })).toBe('right');
    expect(nearestThatWay(places, 'right', { x: 1, y: 0 })).toBe('far');
    expect(nearestThatWay(places, 'here', { x: 0, y: 1 })).toBe('below');
    expect(nearestThatWay(places, 'here', { x: -1, y: 0 })).toBe(null);
    expect(nearestThatWay(places, 'gone', { x: 1, y: 0 })).toBe(null);
  });
});
