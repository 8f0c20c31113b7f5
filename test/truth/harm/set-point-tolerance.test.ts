import { describe, expect, it } from 'vitest';
import { findingOf, judge } from '../build-case.ts';
import { traced } from '../circuit-pieces.ts';
import { usbPort } from '../evidence-pieces.ts';

// A device on a 5 V socket must stand 5.5 V (secondary).
const ID = 'harm/set-point-tolerance@usb~5v';
const judged = (changes: Record<string, string> = {}) => findingOf(judge(traced(changes)), ID);
const most = (r1: number, r2: number, t: number, ref: number): number =>
  2.495 * (1 + ref) * (1 + (r1 * (1 + t)) / (r2 * (1 - t))) + 4e-6 * r1 * (1 + t);

describe('every part at the edge of its tolerance', () => {
  it('1 % resistors and a 1 % reference: 5.13 V at most, below 5.5 V', () => {
    const finding = judged();
    expect(finding).toMatchObject({ outcome: 'pass', consequence: 'damaging' });
    expect((finding.measured as { value: number }).value).toBeCloseTo(most(10_000, 10_000, 0.01, 0.01), 9);
  });

  it('5 % resistors and a reference without grade: 5.41 V, still below; 10 %: 5.7 V, beyond', () => {
    expect(judged({ 'R7 ': 'R7 10k 5%: OUT+, REF', 'R8 ': 'R8 10k 5%: REF, OUT-', 'U3 ': 'U3 431: R=REF, A=OUT-, K=KA' })).toMatchObject({
      outcome: 'pass',
    });
    const beyond = judged({ 'R7 ': 'R7 10k 10%: OUT+, REF', 'R8 ': 'R8 10k 10%: REF, OUT-' });
    expect(beyond).toMatchObject({ outcome: 'fail', consequence: 'damaging' });
    expect((beyond.measured as { value: number }).value).toBeCloseTo(most(10_000, 10_000, 0.1, 0.01), 9);
  });

  it('the worst case has no spread of its own: the draws stay inside it, and the same trace gives the same draws', () => {
    const finding = judged();
    expect(finding.measured).toMatchObject({ u: 0 });
    const drawn = finding.notes.find(({ key }) => key === 'drawnOutputs')!.args as Record<string, number>;
    const edges = finding.notes.find(({ key }) => key === 'edgesOfTolerance')!.args as Record<string, number>;
    expect(drawn['least']).toBeGreaterThan(edges['least']!);
    expect(drawn['most']).toBeLessThan(edges['most']!);
    expect(judged().notes).toEqual(finding.notes);
    // root of the sum of squares of rectangular widths, by hand: sensitivities 2 of the reference, 1/2 of each resistor
    const spread = 5.01 * Math.sqrt((0.01 * 0.01 + 0.005 * 0.005 * 2) / 3);
    expect((drawn['high']! - drawn['low']!) / 2).toBeGreaterThan(1.6 * spread);
    expect((drawn['high']! - drawn['low']!) / 2).toBeLessThan(2.1 * spread);
  });

  it('a tolerance that is not printed is the usual one of the series: 10 kΩ 5 %, 38.3 kΩ 1 %', () => {
    const e24 = judged({ 'R7 ': 'R7 10k: OUT+, REF', 'R8 ': 'R8 10k: REF, OUT-' });
    expect((e24.measured as { value: number }).value).toBeCloseTo(most(10_000, 10_000, 0.05, 0.01), 9);
    const e96 = judged({ 'R7 ': 'R7 38k3: OUT+, REF', 'R8 ': 'R8 38k3: REF, OUT-' });
    expect((e96.measured as { value: number }).value).toBeCloseTo(most(38_300, 38_300, 0.01, 0.01), 9);
  });

  it('a tolerance of 100 % bounds nothing: not assessed', () => {
    expect(judged({ 'R8 ': 'R8 10k 100%: REF, OUT-' })).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
  });

  it('a reference of another family has no tolerance here, and a barrel socket no limit: not assessed', () => {
    expect(judged({ 'U3 ': 'U3 TLV431: R=REF, A=OUT-, K=KA' })).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
    const barrel = usbPort('2 A', { id: 'out', kind: 'barrel' });
    expect(findingOf(judge({ ...traced(), ports: [barrel] }), 'harm/set-point-tolerance@out~5v')).toMatchObject({
      outcome: 'notAssessed',
      reason: 'limitUnknown',
    });
  });
});
