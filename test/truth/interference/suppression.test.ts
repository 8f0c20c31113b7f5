import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { across, board, CONDUCTORS } from '../evidence-pieces.ts';

// Which parts are absent says nothing of what is sent out: informative at any outcome (practice of the bench).
type Suppression = NonNullable<Parameters<typeof board>[0]>['suppression'];
const PARTS = [
  across('l1', 'line', 'hv-minus', { kind: 'commonModeChoke' }),
  across('cx1', 'line', 'neutral', { kind: 'filmCapacitor', safetyClass: 'X2' }),
  across('cy1', 'hv-minus', 'out-minus', { safetyClass: 'Y1' }),
];
const case_ = (suppression: Suppression): Parameters<typeof judge>[0] => ({
  conductors: CONDUCTORS,
  parts: PARTS,
  exhibits: [board(suppression === undefined ? {} : { suppression })],
});
const judged = (suppression: Suppression): Finding => findingOf(judge(case_(suppression)), 'interference/suppression@mains');
const missing = (suppression: Suppression): unknown[] =>
  judged(suppression)
    .notes.filter(({ key }) => key === 'suppressionWithout')
    .map(({ args }) => args['part']);

describe('parts that keep interference off the mains', () => {
  it('all three fitted: nothing is missing, and the finding says that emission was not measured', () => {
    expect(judged(['l1', 'cx1', 'cy1'])).toMatchObject({ outcome: 'pass', consequence: 'informative', measured: { word: 'present' } });
    expect(missing(['l1', 'cx1', 'cy1'])).toEqual([]);
    expect(noteKeys(judged(['l1', 'cx1', 'cy1']))).toContain('emissionNotMeasured');
  });

  it('what is not among them is named', () => {
    expect(missing(['cy1'])).toEqual(['choke', 'xCapacitor']);
    expect(missing(['l1'])).toEqual(['xCapacitor', 'yCapacitor']);
  });

  it('listed parts that are none of these, or of which nobody said what they are, show nothing', () => {
    const bare = { id: 'b1', ref: 'B1', kind: 'other' } as const;
    const patch = { conductors: CONDUCTORS, parts: [bare], exhibits: [board({ suppression: ['b1'] })] };
    expect(findingOf(judge(patch), 'interference/suppression@mains')).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
  });

  it('none at all is told and sets no word', () => {
    for (const none of [{ state: 'absent', because: 'bare board' }, []] as const) {
      const assessment = judge(case_(none as Suppression));
      expect(findingOf(assessment, 'interference/suppression@mains')).toMatchObject({
        outcome: 'fail',
        consequence: 'informative',
        measured: { word: 'absent' },
      });
      expect(assessment.verdict.failure).not.toBe('Unsafe');
    }
  });

  it('could not tell, cannot now, nobody looked, struck', () => {
    expect(judged({ state: 'unknown', because: 'potted' })).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
    expect(judged({ state: 'cannotNow', since: 'burnt' })).toMatchObject({ outcome: 'notAssessed', reason: 'cannotNow' });
    expect(findingsOf(judge(case_(undefined)), 'interference/suppression')).toMatchObject([
      { outcome: 'notAssessed', reason: 'notLooked' },
    ]);
    const struck = { exhibits: [board({ suppression: { state: 'absent', because: 'bare' }, struck: 'another unit' })] };
    expect(findingsOf(judge(struck), 'interference/suppression')).toMatchObject([{ outcome: 'notAssessed', reason: 'struck' }]);
  });
});
