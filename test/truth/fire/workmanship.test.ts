import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { board, CONDUCTORS } from '../evidence-pieces.ts';

// A bad joint that carries the mains, or a conductor that can move, is a danger (IEC 62368-1 clause 4.6, memory; a rule without a ratio); every
// other fault is told and weighs nothing.
type Fault = NonNullable<NonNullable<Parameters<typeof board>[0]>['faults']>[number];
const fault = (kind: Fault['kind'], more: Partial<Fault> = {}): Fault => ({
  id: 'one',
  what: 'as seen under the lens',
  photo: 'p1',
  ...(kind === undefined ? {} : { kind }),
  ...more,
});
const withFaults = (...faults: Fault[]): Parameters<typeof judge>[0] => ({
  conductors: CONDUCTORS,
  exhibits: [board({ faults }), { id: 'p1', kind: 'photo', file: 'f1', of: 'the joint' }],
  files: [{ id: 'f1', path: 'p1.jpg', sha256: '0'.repeat(64), bytes: 1, media: 'image/jpeg' }],
});
const judged = (kind: Fault['kind']): Finding => findingOf(judge(withFaults(fault(kind))), 'fire/workmanship@board-1-one');

describe('faults of the work', () => {
  it.each(['mainsJoint', 'looseConductor'] as const)('%s is a danger: Unsafe, with the words of the examiner', (kind) => {
    const assessment = judge(withFaults(fault(kind)));
    const finding = findingOf(assessment, 'fire/workmanship@board-1-one');
    expect(finding).toMatchObject({ outcome: 'fail', consequence: 'injurious', headline: true, measured: { word: kind } });
    expect(finding.notes).toContainEqual({ key: 'faultFound', args: { what: 'as seen under the lens' } });
    expect(assessment.verdict.failure).toBe('Unsafe');
  });

  it.each(['otherJoint', 'residue', 'solderBall', 'unfixedPart', 'other'] as const)('%s is told and sets no word', (kind) => {
    const assessment = judge(withFaults(fault(kind)));
    expect(findingOf(assessment, 'fire/workmanship@board-1-one')).toMatchObject({ outcome: 'fail', consequence: 'informative' });
    expect(assessment.verdict.failure).not.toBe('Unsafe');
  });

  it('a fault whose kind nobody said is open, neither harmless nor a danger', () => {
    expect(judged(undefined)).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
    expect(noteKeys(judged(undefined))).toContain('faultKindMissing');
  });

  it('each fault is a finding of its own, and says where it is', () => {
    const found = findingsOf(
      judge(withFaults(fault('residue'), fault('mainsJoint', { id: 'two', at: 'line', what: 'cracked joint' }))),
      'fire/workmanship',
    );
    expect(found.map(({ subject, consequence }) => [subject, consequence])).toEqual([
      ['board-1-one', 'informative'],
      ['board-1-two', 'injurious'],
    ]);
    expect(found[1]?.about).toBe('cracked joint, line');
  });

  it('looked over and nothing found passes; nobody looked is not assessed; a struck list is struck', () => {
    expect(findingOf(judge(withFaults()), 'fire/workmanship@board')).toMatchObject({ outcome: 'pass', measured: { word: 'noFaults' } });
    for (const patch of [{}, { exhibits: [board()] }])
      expect(findingsOf(judge(patch), 'fire/workmanship')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    const seen = withFaults()!;
    const struck = { ...seen, exhibits: [board({ faults: [fault('mainsJoint')], struck: 'another unit' }), seen.exhibits![1]!] };
    expect(findingsOf(judge(struck), 'fire/workmanship')).toMatchObject([{ outcome: 'notAssessed', reason: 'struck' }]);
  });
});
