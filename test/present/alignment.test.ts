import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import {
  type Alignment,
  alignByPoints,
  moveAcross,
  type Point,
  type PointPair,
  toCssTransform,
  turnRound,
} from '../../src/present/figure/alignment.ts';

const SQUARE: readonly Point[] = [
  [0, 0],
  [100, 0],
  [100, 80],
  [0, 80],
];

function aligned(pairs: readonly PointPair[]): Alignment {
  const alignment = alignByPoints(pairs);
  if (isRefusal(alignment)) throw new Error(alignment.expected);
  return alignment;
}

/** A camera that looks at the board at a slant: the textbook pinhole with the plane z = 0. */
function photographed([x, y]: Point): Point {
  const depth = 500 + 0.3 * x - 0.2 * y;
  return [(400 * x + 30 * y) / depth + 20, (380 * y - 25 * x) / depth + 10];
}

test('four points of a slanted photograph carry every other point of the board with them', () => {
  const alignment = aligned(SQUARE.map((from) => ({ from, to: photographed(from) })));
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 0, max: 80 }), (x, y) => {
      const [u, v] = moveAcross(alignment, [x, y]);
      const [wanted, below] = photographed([x, y]);
      expect(u).toBeCloseTo(wanted, 9);
      expect(v).toBeCloseTo(below, 9);
      const [backX, backY] = moveAcross(turnRound(alignment), [u, v]);
      expect(backX).toBeCloseTo(x, 7);
      expect(backY).toBeCloseTo(y, 7);
    }),
  );
});

test('three points of a mirrored copy keep parallels parallel', () => {
  const mirrored = ([x, y]: Point): Point => [300 - 2 * x + y, 3 * y + 5];
  const alignment = aligned(SQUARE.slice(0, 3).map((from) => ({ from, to: mirrored(from) })));
  const [x, y] = moveAcross(alignment, [0, 80]);
  expect(x).toBeCloseTo(380, 9);
  expect(y).toBeCloseTo(245, 9);
  const [halfX, halfY] = moveAcross(alignment, [50, 40]);
  expect(halfX).toBeCloseTo(240, 9);
  expect(halfY).toBeCloseTo(125, 9);
});

test('the CSS transform lists the same map column by column', () => {
  const alignment = aligned(SQUARE.map((from) => ({ from, to: [2 * from[0] + 7, 3 * from[1] - 4] as const })));
  const numbers =
    toCssTransform(alignment)
      .match(/-?[\d.]+(?:e-?\d+)?/g)
      ?.slice(1)
      .map(Number) ?? [];
  const wanted = [2, 0, 0, 0, 0, 3, 0, 0, 0, 0, 1, 0, 7, -4, 0, 1];
  expect(numbers).toHaveLength(wanted.length);
  for (const [index, value] of wanted.entries()) expect(numbers[index]).toBeCloseTo(value, 9);
});

test.each([
  ['two points', SQUARE.slice(0, 2)],
  ['five points', [...SQUARE, [3, 3] as const]],
  ['three points on one line', [SQUARE[0], [50, 0], SQUARE[1], SQUARE[2]] as Point[]],
  ['one point twice', [SQUARE[0], SQUARE[0], SQUARE[2], SQUARE[3]] as Point[]],
])('%s are refused', (_what, points) => {
  const answer = alignByPoints(points.map((point) => ({ from: point, to: point })));
  expect(isRefusal(answer)).toBe(true);
});
