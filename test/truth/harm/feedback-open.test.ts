import { describe, expect, it } from 'vitest';
import { findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { traced, withParts } from '../circuit-pieces.ts';

const ID = 'harm/feedback-open@usb~5v';
const judged = (changes: Record<string, string> = {}) => findingOf(judge(traced(changes)), ID);
const note = (finding: ReturnType<typeof judged>, key: string) => finding.notes.find((one) => one.key === key)?.args;

describe('one part of the feedback breaks', () => {
  it('a trip that nobody read leaves the end of a runaway open, and the breaks are named by rule', () => {
    const finding = judged();
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue', consequence: 'damaging' });
    expect(note(finding, 'breaksRunAway')).toEqual({ faults: 'R7 open, R8 short, R9 open, U2 open, U3 open' });
    expect(note(finding, 'breaksLockOut')).toEqual({ faults: 'U3 short' });
    expect(noteKeys(finding)).toContain('tripNotKnown');
  });

  it('a lower resistor open rests at LED and reference, 3.7 V, and not at the reference voltage', () => {
    const args = note(judged(), 'breaksRestAt')!;
    expect(args['faults']).toBe('R8 open, R7 short');
    expect(args['volts']).toBeCloseTo(3.7, 9);
  });

  it('of two resistors side by side one open only shifts; of two in a row one short only shifts', () => {
    const beside = note(judged({ 'R8 ': 'R8 20k: REF, OUT-\nR81 20k: REF, OUT-' }), 'breaksRestAt');
    expect(beside).toMatchObject({ faults: 'R7 short' });
    const row = note(judged({ 'R7 ': 'R7 5k: OUT+, MID\nR71 5k: MID, REF' }), 'breaksRestAt');
    expect(row).toMatchObject({ faults: 'R8 open' });
  });

  it('a trip at 27.3 V over 14 turns lets 10 turns reach 19.6 V: beyond 5.5 V; at 7 V: 5.1 V, too near to tell', () => {
    const trip = (volts: string) =>
      findingOf(judge(withParts(traced(), { u1: { law: { law: 'fixedFrequency', overvoltageTrip: volts } } })), ID);
    const high = trip('27.3 V');
    expect(high).toMatchObject({ outcome: 'fail', consequence: 'damaging' });
    expect((high.measured as { value: number }).value).toBeCloseTo(((27.3 + 0.7) * 10) / 14 - 0.4, 9);
    expect(trip('6 V')).toMatchObject({ outcome: 'pass' });
    expect(trip('7.5 V')).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
  });

  it('an open Zener and an open optocoupler run away, a shorted Zener falls', () => {
    const finding = judged({ 'R7 ': '', 'R8 ': '', 'R10 ': '', 'U3 ': 'ZD1 3V6: OUT-, KA' });
    expect(note(finding, 'breaksRunAway')).toEqual({ faults: 'ZD1 open, R9 open, U2 open' });
    expect(note(finding, 'breaksRest')).toEqual({ faults: 'ZD1 short' });
  });

  it('feedback inside a chip is not judged by rule; without feedback the question does not apply; without a trace nobody looked', () => {
    expect(judged({ 'U2 ': '', 'R9 ': '', 'R10 ': '', 'U3 ': '', 'R7 ': 'R7 22k: AUX, FB', 'R8 ': 'R8 3k3: FB, HV-' })).toMatchObject({
      outcome: 'notAssessed',
      reason: 'limitUnknown',
    });
    expect(findingsOf(judge(traced({ 'U2 ': '' })), 'harm/feedback-open')).toMatchObject([
      { outcome: 'notApplicable', reason: 'doesNotApply' },
    ]);
    expect(findingsOf(judge(), 'harm/feedback-open')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
});
