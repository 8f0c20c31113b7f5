import { describe, expect, it } from 'vitest';
import { BENCH_SET } from '../../../src/core/check/bench-set.ts';
import { CHECKS } from '../../../src/core/check/registry.ts';
import { LOST_MEASURES } from '../../../src/core/evidence/day.ts';
import { type CasePatch, findingsOf, judge, noteKeys } from '../build-case.ts';

const LOST = BENCH_SET.flatMap(({ id, before }) => {
  const need = CHECKS.find((check) => check.id === id)?.needs[0];
  return before === undefined || need === undefined ? [] : [{ check: id, before, need }];
});
const opened = (measures: readonly (typeof LOST_MEASURES)[number][], ...more: NonNullable<CasePatch['events']>) =>
  judge({
    events: [
      {
        id: 'opened-1',
        at: '2026-03-04T10:00:00',
        what: 'opened',
        leftOut: measures.map((measure) => ({ id: `left-${measure.toLowerCase()}`, measure, because: 'no network at hand' })),
      },
      ...more,
    ],
  });

/** Evidence that cannot be had any more is neither a pass nor a thing to do: practice of the bench, no source. */
describe('what was given up at a point of no return', () => {
  it('can be said of every measurement that such a point takes away', () => {
    expect(LOST.filter(({ need }) => !(LOST_MEASURES as readonly string[]).includes(need))).toEqual([]);
    expect(LOST.length).toBeGreaterThan(20);
  });

  it.each(LOST)('cannot be done now: $need for $check', ({ check, need }) => {
    const before = findingsOf(judge(), check);
    const after = findingsOf(opened([need as (typeof LOST_MEASURES)[number]]), check);
    expect(before.every(({ reason }) => reason === 'notLooked')).toBe(true);
    for (const finding of after) {
      expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'cannotNow' });
      expect(finding.fields).toEqual([`/events/opened-1/leftOut/left-${need.toLowerCase()}`]);
      expect(noteKeys(finding)).toContain('because');
    }
  });

  it('is asked for no more, before no later point either', () => {
    const after = opened(['touchBothWays', 'short']);
    const left = after.lastChance.flatMap(({ measure }) => measure);
    expect(left).not.toContain('touchBothWays');
    expect(after.next.map(({ measure }) => measure)).not.toContain('short');
    expect(left).toContain('spotOutside');
  });

  it('is asked for again once the sample is closed again', () => {
    const after = opened(['touchBothWays'], { id: 'closed', at: '2026-03-04T11:00:00', what: 'reclosed' });
    expect(findingsOf(after, 'shock/touch-current').map(({ reason }) => reason)).toEqual(['notLooked']);
    expect(after.lastChance.flatMap(({ measure }) => measure)).toContain('touchBothWays');
  });

  it('counts where it was measured all the same', () => {
    const reading = (orientation: 'A' | 'B') => ({
      id: `touch-${orientation.toLowerCase()}`,
      kind: 'touch' as const,
      quantity: 'touchCurrentRms' as const,
      from: 'out',
      method: 'network' as const,
      value: { v: '20 µA', under: { supply: 'direct' as const, orientation, mains: '230 V' } },
    });
    const after = judge({
      conductors: [{ id: 'out', name: 'output minus', side: 'output' }],
      exhibits: [reading('A'), reading('B')],
      events: [
        { id: 'o', at: '2026-03-04T10:00:00', what: 'opened', leftOut: [{ id: 'l', measure: 'touchBothWays', because: 'no time' }] },
      ],
    });
    for (const { reason } of findingsOf(after, 'shock/touch-current')) expect(reason).not.toBe('cannotNow');
  });
});
