import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, judge } from '../build-case.ts';
import { board, type PartInput } from '../evidence-pieces.ts';

// Time gates of IEC 60127-2 sheet 5 (secondary: data sheets): 1.5 times the rating for an hour, 2.1 times opens within 30 min. Radial and surface-mounted fuses
// (secondary, one weak sheet): 2.1 times within 2 min. UL 248-14 (secondary: a maker's guide): twice within 2 min; breaks 35 A to 1 A, 100 A to 3.5 A at 250 V.
const judged = (
  part: Partial<PartInput> | null,
  market: 'EU' | 'US' = 'EU',
  kind: 'cartridge' | 'fusibleResistor' = 'cartridge',
): Finding => {
  const parts: PartInput[] = part === null ? [] : [{ id: 'f1', ref: 'F1', kind: 'fuse', ...part }];
  const own = board({ fuse: kind, ...(part === null ? {} : { fusePart: 'f1' }) });
  return findingOf(judge({ setting: { market }, parts, exhibits: [own] }), 'fire/fuse@mains');
};
const note = (finding: Finding, key: string) => finding.notes.find((one) => one.key === key)?.args;

describe('what a fuse that was found bears, and when it is sure to open', () => {
  it('1 A holds 1.5 A for an hour and opens within half an hour only from 2.1 A on', () => {
    const finding = judged({ rating: { current: '1 A' } });
    expect(finding.outcome).toBe('pass');
    expect(note(finding, 'fuseHolds')).toEqual({ holds: 1.5, time: 3600 });
    expect(note(finding, 'fuseOpens')).toEqual({ opens: 2.1, time: 1800 });
  });

  it('a radial fuse opens within two minutes, and what it holds was read nowhere', () => {
    const finding = judged({ rating: { current: '2 A' }, package: 'radial, time-lag' });
    expect(note(finding, 'fuseOpens')).toEqual({ opens: 4.2, time: 120 });
    expect(note(finding, 'fuseHolds')).toBeUndefined();
  });

  it('on the American market its own sheet stands beside, with what it breaks at 250 V', () => {
    expect(note(judged({ rating: { current: '2 A' } }, 'US'), 'fuseAmerican')).toEqual({ opens: 4, time: 120, breaks: 100 });
    expect(note(judged({ rating: { current: '1 A' } }, 'US'), 'fuseAmerican')).toMatchObject({ breaks: 35 });
    expect(note(judged({ rating: { current: '15 A' } }, 'US'), 'fuseAmerican')).toBeUndefined();
    expect(note(judged({ rating: { current: '1 A' } }), 'fuseAmerican')).toBeUndefined();
  });

  it('nothing is said where nobody read the rating, or of a fusible resistor', () => {
    expect(note(judged(null), 'fuseOpens')).toBeUndefined();
    expect(note(judged({}), 'fuseOpens')).toBeUndefined();
    expect(note(judged({ rating: { current: '1 A' } }, 'EU', 'fusibleResistor'), 'fuseOpens')).toBeUndefined();
  });
});
