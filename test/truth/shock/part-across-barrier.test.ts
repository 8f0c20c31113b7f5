import { describe, expect, it } from 'vitest';
import { findingOf, findingsOf, judge } from '../build-case.ts';
import { traced, withParts } from '../circuit-pieces.ts';

const CHECK = 'shock/part-across-barrier';
const ESTABLISHED = { cy1: { identity: 'established' } } as const;
const judged = (id: string, changes: Record<string, string> = {}) =>
  findingOf(judge(withParts(traced(changes), ESTABLISHED)), `${CHECK}@${id}`);

describe('parts that the trace finds across the barrier', () => {
  it('transformer, optocoupler and one Y1 of established identity may stand there', () => {
    const found = findingsOf(judge(withParts(traced(), ESTABLISHED)), CHECK);
    expect(found.map(({ subject, outcome }) => [subject, outcome])).toEqual([
      ['cy1', 'pass'],
      ['t1', 'pass'],
      ['u2', 'pass'],
    ]);
  });

  it.each([
    ['a wire', 'W9: HV-, OUT-', 'w9'],
    ['a fuse', 'F9: HV-, OUT-', 'f9'],
    ['a coil', 'L9 1mH: HV-, OUT-', 'l9'],
  ])('%s from rail to rail is a bridge: lethal', (_name, line, id) => {
    expect(judged(id, { 'J2: ': `J2: +=OUT+, -=OUT-\n${line}` })).toMatchObject({
      outcome: 'fail',
      consequence: 'lethal',
      rung: 'bridgedOrAbsent',
      headline: true,
    });
  });

  it('one Y2 is basic insulation only, two equal ones of established identity are enough, also over a net that nobody named', () => {
    const y2 = (line: string, parts: string[]) =>
      judge(withParts(traced({ 'CY1 ': line }), Object.fromEntries(parts.map((id) => [id, { identity: 'established' }] as const))));
    expect(findingOf(y2('CY1 1nF Y2 !: HV-, OUT-', ['cy1']), `${CHECK}@cy1`)).toMatchObject({
      outcome: 'fail',
      consequence: 'injurious',
      rung: 'basicNotReinforced',
    });
    expect(findingOf(y2('CY1 1nF Y2 !: HV-, MID\nCY2 1nF Y2 !: MID, OUT-', ['cy1', 'cy2']), `${CHECK}@cy1+cy2`)).toMatchObject({
      outcome: 'pass',
    });
  });

  it('an ordinary capacitor is lethal, a class that is only claimed is open, a class nobody looked for is not assessed', () => {
    const absent = withParts(traced({ 'CY1 ': 'CY1 1nF !: HV-, OUT-' }), {
      cy1: { safetyClass: { state: 'absent', because: 'a blue disc, no class' } },
    });
    expect(findingOf(judge(absent), `${CHECK}@cy1`)).toMatchObject({ outcome: 'fail', consequence: 'lethal' });
    expect(findingOf(judge(traced()), `${CHECK}@cy1`)).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
    expect(findingOf(judge(traced({ 'CY1 ': 'CY1 1nF !: HV-, OUT-' })), `${CHECK}@cy1`)).toMatchObject({
      outcome: 'notAssessed',
      reason: 'notLooked',
    });
  });

  it('a resistor may stand there under rules that are not held here: open, marked or not', () => {
    expect(judged('r99', { 'J2: ': 'J2: +=OUT+, -=OUT-\nR99 10M !: HV-, OUT-' })).toMatchObject({
      outcome: 'inconclusive',
      reason: 'limitUnknown',
    });
    expect(judged('r99', { 'J2: ': 'J2: +=OUT+, -=OUT-\nR99 10M: HV-, OUT-' })).toMatchObject({
      outcome: 'inconclusive',
      reason: 'limitUnknown',
    });
  });

  it('an output on the mains side is bridged, whatever the parts are', () => {
    const buck =
      'mains: L, N\nJ1: L=L, N=N\nF1: L, L1\nD1: L1, HV+\nEC1 4u7: HV+, N\nU1 (controller): D=HV+, S=SW, FB=FB\nD2: N, SW\nL1 1mH: SW, OUT\nEC2 100uF: OUT, N\nJ2: +=OUT, -=N';
    expect(findingOf(judge(traced({}, buck)), `${CHECK}@output`)).toMatchObject({
      outcome: 'fail',
      consequence: 'lethal',
      rung: 'bridgedOrAbsent',
    });
  });

  it('sides that nobody stated leave the question open, and so does no trace at all', () => {
    expect(findingsOf(judge(traced({ 'output: ': '' })), CHECK)).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    expect(findingsOf(judge(), CHECK)).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
});

describe('a part that the nets and the trace both show across the barrier', () => {
  const bridge = traced({ 'J2: ': 'J2: +=OUT+, -=OUT-\nW9: HV-, OUT-' });
  /** The same trace, and nobody stated where the minus of the bulk capacitor stands: that follows from the parts alone. */
  const unstated = {
    ...bridge,
    conductors: (bridge.conductors ?? []).map((one) => (one.name === 'HV-' ? { ...one, side: { state: 'notLooked' as const } } : one)),
  };

  it('is one defect: both findings stand, the second says so, and the verdict names it once', () => {
    const assessment = judge(bridge);
    const first = findingOf(assessment, 'shock/bridging-part@w9');
    const second = findingOf(assessment, `${CHECK}@w9`);
    expect([first.outcome, second.outcome]).toEqual(['fail', 'fail']);
    expect(second.sameAs).toBe(first.id);
    expect(second.notes.map(({ key }) => key)).toContain('samePart');
    expect(assessment.verdict.failure).toBe('Dangerous');
    expect(assessment.verdict.decidedBy).toContain(first.id);
    expect(assessment.verdict.decidedBy).not.toContain(second.id);
  });

  it('where only the trace shows it, the trace is the reason', () => {
    const assessment = judge(unstated);
    const [bridging] = findingsOf(assessment, 'shock/bridging-part');
    expect(bridging?.outcome).not.toBe('fail');
    expect(findingOf(assessment, `${CHECK}@w9`).sameAs).toBeUndefined();
    expect(assessment.verdict.decidedBy).toContain(`${CHECK}@w9`);
  });
});
