import { afterAll, describe, expect, it } from 'vitest';
import { drawCaseSchematic } from '../../src/app/draw-case-schematic.ts';
import { startDrawingPool } from '../../src/drawing-pool/start-drawing-pool.ts';
import { buildCase } from '../truth/build-case.ts';
import { traced } from '../truth/circuit-pieces.ts';

const START_MS = 60_000; // from sources the thread reads everything through the loader
const TICK_MS = 5;
const pool = startDrawingPool();
afterAll(() => pool.close());

describe('the thread that draws', () => {
  it(
    'draws the same as this one does, hand moves and marks included',
    async () => {
      const one = buildCase(traced());
      const options = { moves: new Map([['r7', { x: 300, y: 400 }]]), marks: new Map([['r8', 'fail' as const]]), live: true };
      expect(await pool.draw(one, options)).toEqual(await drawCaseSchematic(one, options));
      expect(await pool.draw(buildCase(), {})).toBe(null);
    },
    START_MS,
  );

  it(
    'leaves this one free to answer meanwhile',
    async () => {
      const one = buildCase(traced());
      let ticks = 0;
      const clock = setInterval(() => {
        ticks += 1;
      }, TICK_MS);
      await Promise.all(Array.from({ length: 4 }, (_, number) => pool.draw(one, { moves: new Map([['r7', { x: 40 * number, y: 300 }]]) })));
      clearInterval(clock);
      // drawn here, the whole time would pass between two ticks
      expect(ticks).toBeGreaterThan(3);
    },
    START_MS,
  );
});
