import { describe, expect, it } from 'vitest';
import { DAY_WORDS, POINT_WORDS } from '../../src/present/words/bench-words.ts';
import { MEASUREMENTS } from '../../src/present/words/next-words.ts';
import { DAY, pointsBefore, STEPS, stepOfMeasure } from '../../src/web/bench/day-order.ts';
import { isPassed, nextStep, pointAhead, progressOf } from '../../src/web/bench/day-progress.ts';
import { listOf } from '../../src/web/part/new-exhibit.ts';
import { benchCase, demoCase, emptyCase } from './bench-case.ts';

describe('the day at the bench', () => {
  // order: common practice, no source
  it('does everything with the case shut before it is opened, and the transformer last', () => {
    expect(DAY.map((one) => ('id' in one ? one.id : `- ${one.point}`))).toEqual([
      'photographs',
      'body',
      'cold',
      'powerUp',
      'touch',
      'advertised',
      'sweeps',
      'events',
      'soak',
      'hotAndShort',
      'pins',
      'drop',
      '- opening',
      'open',
      'board',
      'circuit',
      'thermal',
      'waveforms',
      '- desoldering',
      'partsOff',
      '- unwinding',
      'transformer',
    ]);
  });

  it('has words for each of its steps and points', () => {
    expect(Object.keys(DAY_WORDS)).toEqual(STEPS.map(({ id }) => id));
    expect(Object.keys(POINT_WORDS)).toEqual(DAY.flatMap((one) => ('point' in one ? [one.point] : [])));
  });

  it('takes every measurement that can be proposed in one of its steps', () => {
    expect(Object.keys(MEASUREMENTS).filter((measure) => stepOfMeasure(measure) === null)).toEqual([]);
  });

  it('takes nothing with the mains side open before the opening', () => {
    for (const step of STEPS) expect(step.open !== undefined, step.id).toBe(pointsBefore(step.id).includes('opening'));
  });

  it('begins with photographs, and nothing of a new case is done', () => {
    const one = emptyCase();
    const view = one.view();
    expect(nextStep(listOf(one, 'exhibits'), view)).toBe('photographs');
    for (const step of STEPS) expect(progressOf(step, [], view), step.id).toBe('open');
    expect(pointAhead('transformer', view)).toBe('opening');
  });

  it('calls a step begun while a measurement of it is still proposed, done when none is', () => {
    const one = demoCase('moss-trio');
    const view = one.view();
    const sweeps = STEPS.find(({ id }) => id === 'sweeps');
    if (sweeps === undefined) throw new Error('no sweeps in the day');
    expect(progressOf(sweeps, listOf(one, 'exhibits'), view)).toBe('begun');
    expect(progressOf(sweeps, listOf(one, 'exhibits'), { ...view, next: [] })).toBe('done');
  });

  it('goes on behind the opening once the sample was opened', () => {
    const one = demoCase('fell-12');
    const view = one.view();
    expect(isPassed('opening', view)).toBe(true);
    expect(pointAhead('board', view)).toBeNull();
    expect(pointAhead('transformer', view)).toBe('desoldering');
    expect(pointsBefore(nextStep(listOf(one, 'exhibits'), view))).toContain('opening');
  });

  it('counts a sample that was unwound as opened and desoldered', () => {
    const events = [{ id: 'u', at: '2026-03-09T16:30:00', what: 'unwound' }];
    const view = benchCase({ ...(emptyCase().one as object), events }).view();
    expect(isPassed('opening', view) && isPassed('desoldering', view) && isPassed('unwinding', view)).toBe(true);
  });
});
