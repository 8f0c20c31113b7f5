import { describe, expect, it } from 'vitest';
import { findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { traced, withParts } from '../circuit-pieces.ts';
import { usbPort } from '../evidence-pieces.ts';

// USB-A socket: 4.75 V to 5.25 V (secondary). Reference 2.495 V (memory), 10 kΩ over 10 kΩ: 2.495 × 2 + 2 µA × 10 kΩ = 5.01 V.
const ID = 'delivery/set-point@usb~5v';
const judged = (changes: Record<string, string> = {}) => findingOf(judge(traced(changes)), ID);

describe('the voltage that the parts set', () => {
  it('two equal resistors and a 431 make 5.01 V: inside', () => {
    const finding = judged();
    expect(finding).toMatchObject({ outcome: 'pass', consequence: 'disappointing' });
    expect((finding.measured as { value: number }).value).toBeCloseTo(5.01, 6);
    expect(noteKeys(finding)).toEqual(expect.arrayContaining(['setWithoutLoad', 'ledCurrentAtMost', 'bypassFeedsReference']));
  });

  it('a lower resistor of 8.2 kΩ makes 5.56 V: outside', () => {
    const finding = judged({ 'R8 ': 'R8 8k2 1%: REF, OUT-' });
    expect(finding).toMatchObject({ outcome: 'fail', consequence: 'disappointing' });
    expect((finding.measured as { value: number }).value).toBeCloseTo(2.495 * (1 + 10_000 / 8200) + 0.02, 6);
  });

  it('resistors of 10 % near the edge cannot decide', () => {
    expect(judged({ 'R7 ': 'R7 10k 10%: OUT+, REF', 'R8 ': 'R8 9k1 10%: REF, OUT-' })).toMatchObject({
      outcome: 'inconclusive',
      reason: 'withinUncertainty',
    });
  });

  it('the same divider in two rows and side by side sets the same', () => {
    const rows = judged({ 'R7 ': 'R7 4k7 1%: OUT+, MID\nR71 5k3 1%: MID, REF', 'R8 ': 'R8 20k 1%: REF, OUT-\nR81 20k 1%: REF, OUT-' });
    expect((rows.measured as { value: number }).value).toBeCloseTo(5.01, 6);
  });

  it('a measured resistor outranks its marking', () => {
    const patch = withParts(traced(), { r8: { measured: '8.20 kΩ ± 0.01 kΩ' } });
    expect(findingOf(judge(patch), ID)).toMatchObject({ outcome: 'fail' });
  });

  it('a value that was looked at and not read is inconclusive; one that nobody looked at is not assessed', () => {
    expect(judged({ 'R8 ': 'R8 ?: REF, OUT-' })).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
      fields: ['/parts/r8/value'],
    });
    expect(judged({ 'R8 ': 'R8: REF, OUT-' })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged({ 'U3 ': 'U3 (reference): R=REF, A=OUT-, K=KA' })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });

  it('a resistor of 0 Ω sets nothing, and the pin of a reference that is its cathode has no divider', () => {
    expect(judged({ 'R8 ': 'R8 0R: REF, OUT-' })).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
    expect(judged({ 'R9 ': 'R9 0R: OUT+, LED' })).toMatchObject({ outcome: 'pass' });
    expect(judged({ 'R7 ': '', 'U3 ': 'U3 (reference) 431A: R=KA, A=OUT-, K=KA' })).toMatchObject({ outcome: 'notAssessed' });
  });

  it('a Zener and the LED: 3.6 V + 1.2 V and 0.47 V on the resistor make 5.27 V, open within the tolerances', () => {
    const finding = judged({ 'R7 ': '', 'R8 ': '', 'R10 ': '', 'U3 ': 'ZD1 3V6: OUT-, KA' });
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect((finding.measured as { value: number }).value).toBeCloseTo(5.27, 6);
  });

  it('feedback inside a chip says nothing, and neither does a trace without feedback', () => {
    expect(judged({ 'U2 ': '', 'R9 ': '', 'R10 ': '', 'U3 ': '', 'R7 ': 'R7 22k: AUX, FB', 'R8 ': 'R8 3k3: FB, HV-' })).toMatchObject({
      outcome: 'notAssessed',
      reason: 'limitUnknown',
    });
    expect(judged({ 'U2 ': '' })).toMatchObject({ outcome: 'notAssessed' });
  });

  it('no trace, or no port: not assessed', () => {
    expect(findingsOf(judge({ ports: [usbPort()] }), 'delivery/set-point')).toMatchObject([
      { outcome: 'notAssessed', reason: 'notLooked' },
    ]);
    expect(findingsOf(judge({ ...traced(), ports: [] }), 'delivery/set-point')).toMatchObject([
      { outcome: 'notAssessed', reason: 'notLooked' },
    ]);
  });
});

describe('a negotiating unit', () => {
  const chip = { 'CY1 ': 'U4 (negotiation): S1=P1, GND=OUT-' };
  const port = usbPort('2 A', {
    kind: 'usbC',
    levels: [
      { id: '5v', voltage: '5 V' },
      { id: '9v', voltage: '9 V' },
    ],
  });
  it('a leg beside the lower resistor sets the higher level: 10 kΩ beside 6.2 kΩ gives 9.03 V', () => {
    const assessment = judge({ ...traced({ ...chip, 'R10 ': 'R12 6k2 1%: REF, P1' }), ports: [port] });
    expect(findingOf(assessment, 'delivery/set-point@usb~5v')).toMatchObject({ outcome: 'pass' });
    const nine = findingOf(assessment, 'delivery/set-point@usb~9v');
    expect(nine).toMatchObject({ outcome: 'pass' });
    expect((nine.measured as { value: number }).value).toBeCloseTo(2.495 * (1 + 10_000 * (1 / 10_000 + 1 / 6200)) + 0.02, 6);
    expect(noteKeys(nine)).toContain('setWithLegs');
  });
  it('without a leg the chip shifts by a current nobody sees: only the lowest level is judged', () => {
    const assessment = judge({ ...traced(chip), ports: [port] });
    expect(findingOf(assessment, 'delivery/set-point@usb~5v')).toMatchObject({ outcome: 'pass' });
    expect(findingOf(assessment, 'delivery/set-point@usb~9v')).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
  });
});

describe('what the sheet of a chip adds', () => {
  const chip = { 'CY1 ': 'U4 (negotiation): OUT=REF, GND=OUT-' };
  const port = usbPort('2 A', {
    kind: 'usbC',
    levels: [
      { id: '5v', voltage: '5 V' },
      { id: '9v', voltage: '9 V' },
    ],
  });
  it('a sink of 400 µA over 10 kΩ lifts 5.01 V to 9.01 V; a wrong one leaves the window', () => {
    const nine = (sink: string) =>
      findingOf(
        judge({ ...withParts(traced(chip), { u4: { law: { law: 'currentSink', sinks: { '9v': sink } } } }), ports: [port] }),
        'delivery/set-point@usb~9v',
      );
    expect((nine('400 µA').measured as { value: number }).value).toBeCloseTo(9.01, 6);
    expect(nine('400 µA')).toMatchObject({ outcome: 'pass' });
    expect(nine('300 µA')).toMatchObject({ outcome: 'fail' });
  });
  it('pull-up of the feedback pin and grade of the optocoupler give the greatest LED resistor', () => {
    // (5.01 - 1.2 - 2.5) V × 2 / (230 µA + 2 × 1.2 mA) by hand, an 817C with 1 kΩ across the LED
    const patch = withParts(traced({ 'U2 ': 'U2 (optocoupler) 817C: A=LED, K=KA, C=FB, E=HV-' }), {
      u1: { law: { law: 'fixedFrequency', pullVoltage: '4.8 V', pullResistance: '20 kΩ' } },
    });
    const note = findingOf(judge(patch), ID).notes.find(({ key }) => key === 'ledResistorAtMost');
    expect(note?.args['ohms']).toBeCloseTo(((5.01 - 1.2 - 2.5) * 2) / (230e-6 + 2 * 1.2e-3), 6);
    expect(noteKeys(judged())).not.toContain('ledResistorAtMost');
    // (5.01 - 1.2 - 2.5) V / 50 mA: the LED is the weaker of the two (memory)
    const other = findingOf(judge(patch), ID).notes.find(({ key }) => key === 'ledResistorAtLeast');
    expect(other?.args['ohms']).toBeCloseTo((5.01 - 1.2 - 2.5) / 0.05, 6);
    expect(noteKeys(judged())).not.toContain('ledResistorAtLeast');
  });
  it('the window of the LED resistor is worked out at every level, wider at the higher one', () => {
    const lines = {
      'U2 ': 'U2 (optocoupler) 817C: A=LED, K=KA, C=FB, E=HV-',
      'CY1 ': 'U4 (negotiation): S1=P1, GND=OUT-',
      'R10 ': 'R12 6k2 1%: REF, P1',
    };
    const patch = withParts(traced(lines), { u1: { law: { law: 'fixedFrequency', pullVoltage: '4.8 V', pullResistance: '20 kΩ' } } });
    const both = ['5v', '9v'].map((level) => findingOf(judge({ ...patch, ports: [port] }), `delivery/set-point@usb~${level}`).notes);
    const ohms = (key: string): number[] => both.map((notes) => Number(notes.find((note) => note.key === key)?.args['ohms']));
    const [five, nine] = [2.495 * 2 + 0.02, 2.495 * (1 + 10_000 * (1 / 10_000 + 1 / 6200)) + 0.02];
    expect(ohms('ledResistorAtLeast')).toEqual([expect.closeTo((five - 3.7) / 0.05, 6), expect.closeTo((nine - 3.7) / 0.05, 6)]);
    expect(ohms('ledResistorAtMost')).toEqual([
      expect.closeTo(((five - 3.7) * 2) / 230e-6, 4),
      expect.closeTo(((nine - 3.7) * 2) / 230e-6, 4),
    ]);
  });
  it('resistors across the output are its least load: 2 kΩ and 2 kΩ side by side draw 5 mA and make 25 mW of heat at 5.01 V', () => {
    const finding = judged({ 'J2: ': 'J2: +=OUT+, -=OUT-\nR20 2k: OUT+, OUT-\nR21 2k: OUT+, OUT-' });
    const note = finding.notes.find(({ key }) => key === 'bleederLoads');
    expect(note?.args['parts']).toBe('R20, R21');
    expect(note?.args['amperes']).toBeCloseTo(5.01 / 1000, 8);
    expect(note?.args['watts']).toBeCloseTo(5.01 ** 2 / 1000, 8);
    expect(noteKeys(judged())).not.toContain('bleederLoads');
    expect(noteKeys(judged({ 'J2: ': 'J2: +=OUT+, -=OUT-\nR20 ?: OUT+, OUT-' }))).not.toContain('bleederLoads');
  });
});
