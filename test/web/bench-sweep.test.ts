import { describe, expect, it } from 'vitest';
import type { StopView } from '../../src/present/workspace/next-view.ts';
import { isCrossed, placeOnLine, stopsOf } from '../../src/web/bench/crossed-stop.ts';
import { countText, localTime } from '../../src/web/bench/local-time.ts';
import { planCurrents, readCurrents } from '../../src/web/bench/planned-currents.ts';
import { beginSweep, claimOf, endSweep, findSweep, isEnded, keepRow, rowsOf } from '../../src/web/bench/sweep-record.ts';
import { demoCase } from './bench-case.ts';

const SET = {
  port: 'a1',
  level: '5v',
  mains: '230 V',
  frequency: '50 Hz',
  supply: 'direct',
  sense: 'socket',
  order: 'up',
  cover: 'closed',
  dwell: '20 s',
};
const watch = (of: string, value: number): StopView => ({ words: of, step: null, of, title: of, about: '', at: '', value });

describe('currents to set', () => {
  it('take the quarters of the claim, and go on beyond it in steps to where the test is stopped', () => {
    // 2.4 A: 1.3 times it is 3.12 A
    expect(planCurrents(2.4, 3.12)).toEqual([0, 0.24, 0.6, 1.2, 1.8, 2.16, 2.4, 2.52, 2.64, 2.76, 2.88, 3, 3.12]);
    expect(planCurrents(2.4, 2.6).at(-1)).toBe(2.52);
  });

  it('are told apart by what a load can be set to', () => {
    const currents = planCurrents(0.05, null);
    expect(new Set(currents).size).toBe(currents.length);
    for (const current of currents) expect(Math.abs(current * 200 - Math.round(current * 200))).toBeLessThan(1e-9);
  });

  it('are read with point or comma, and refused whole when one is no number', () => {
    expect(readCurrents('0 0,5 1.0 A')).toEqual([0, 0.5, 1]);
    expect(readCurrents('0 half 1')).toBeNull();
    expect(readCurrents('-1')).toBeNull();
  });
});

describe('a stop limit', () => {
  it('is crossed above it, and for a falling voltage below it', () => {
    expect(isCrossed(watch('outputCurrent', 3.12), { outputCurrent: 3.2 })).toBe(true);
    expect(isCrossed(watch('outputCurrent', 3.12), { outputCurrent: 3.12 })).toBe(false);
    expect(isCrossed(watch('outputVoltageDown', 2.5), { outputVoltage: 2.4 })).toBe(true);
    expect(isCrossed(watch('outputVoltageUp', 6), { outputVoltage: 2.4 })).toBe(false);
    expect(isCrossed(watch('caseTemperature', 368.15), { temperature: 370 })).toBe(true);
  });

  it('is not crossed by what was not entered', () => {
    expect(isCrossed(watch('outputVoltageDown', 2.5), { outputCurrent: 1 })).toBe(false);
  });

  it('is drawn in the middle, with twice as good a quarter of the line to the right', () => {
    expect(placeOnLine(watch('outputCurrent', 2), 2)).toBeCloseTo(0.5);
    expect(placeOnLine(watch('outputCurrent', 2), 1)).toBeCloseTo(0.75);
    expect(placeOnLine(watch('outputVoltageDown', 2), 1)).toBeCloseTo(0.25);
    expect(placeOnLine(watch('outputCurrent', 2), 0)).toBe(1);
    expect(placeOnLine(watch('outputVoltageDown', 2), 0)).toBe(0);
  });

  it('of another output does not stop the one under test; that of the case stops all', () => {
    const { next } = demoCase('moss-trio').view();
    const own = stopsOf(next, 'a1~5v');
    expect(own.map(({ of }) => of).sort()).toEqual(['caseTemperature', 'outputCurrent', 'outputVoltageDown', 'outputVoltageUp']);
    expect(own.find(({ of }) => of === 'outputCurrent')?.value).toBeCloseTo(1.3 * 2.4);
    expect(stopsOf(next, null).length).toBeGreaterThan(own.length);
  });
});

describe('a sweep at the bench', () => {
  it('keeps its set-up once and a row for each reading, as the case format has it', () => {
    const one = demoCase('moss-trio');
    expect(claimOf(one, 'a1', '5v')).toBe(2.4);
    const begun = beginSweep(one, SET, '2026-03-12T10:00:00');
    let now = one.after(begun.changes);
    const sweep = () => findSweep(now, begun.id) ?? {};
    now = now.after(keepRow(sweep(), '0.000', '5.110', undefined));
    now = now.after(keepRow(sweep(), '0.240', { state: 'marked', at: '2026-03-12T10:01:00' }, '1.9'));
    expect(rowsOf(sweep()).map(({ current, voltage, power }) => [current, voltage, power])).toEqual([
      ['0.000', '5.110', { state: 'notLooked' }],
      ['0.240', { state: 'marked', at: '2026-03-12T10:01:00' }, '1.9'],
    ]);
    expect(isEnded(sweep())).toBe(false);
    now = now.after(endSweep(sweep(), 'load off at 10:02:00'));
    expect(isEnded(sweep())).toBe(true);
    const kept = now.parsed().exhibits.find(({ id }) => id === begun.id);
    expect(kept).toMatchObject({ port: 'a1', level: '5v', under: { mains: '230 V', supply: 'direct', cover: 'closed' }, dwell: '20 s' });
  });
});

describe('the clock of the bench', () => {
  it('writes local time without a zone, and counts minutes and seconds', () => {
    expect(localTime(new Date(2026, 2, 4, 9, 5, 7))).toBe('2026-03-04T09:05:07');
    expect(countText(65.4)).toBe('1:05');
  });
});
