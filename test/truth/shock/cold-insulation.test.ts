import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { across, CONDUCTORS, type PartInput, touch } from '../evidence-pieces.ts';

// Limits at 500 V d.c.: 2 MΩ for a class II appliance after repair, DIN VDE 0701-0702 (secondary: manuals of two makers of appliance testers);
// 7 MΩ for reinforced insulation, older editions of IEC 60335-1 (memory; the Russian adoption of IEC 60669-2-1 asks the same towards SELV).
type Exhibit = NonNullable<CaseInput['exhibits']>[number];
type Insulation = Extract<Exhibit, { kind: 'cold'; quantity: 'insulation' }>;
type Resistance = Extract<Exhibit, { kind: 'cold'; quantity: 'resistance' }>;
type Capacitance = Extract<Exhibit, { kind: 'cold'; quantity: 'capacitance' }>;

const PAIR = 'shock/cold-insulation@line~out-minus';
const insulation = (value: Insulation['value'], more: Partial<Insulation> = {}): Insulation => ({
  id: 'ins-1',
  kind: 'cold',
  quantity: 'insulation',
  between: ['line', 'out-minus'],
  testVoltage: '500 V',
  value,
  ...more,
});
const resistance = (value: Resistance['value'], more: Partial<Resistance> = {}): Resistance => ({
  id: 'res-1',
  kind: 'cold',
  quantity: 'resistance',
  between: ['line', 'out-minus'],
  value,
  ...more,
});
const capacitance = (value: Capacitance['value'], more: Partial<Capacitance> = {}): Capacitance => ({
  id: 'cap-1',
  kind: 'cold',
  quantity: 'capacitance',
  between: ['line', 'out-minus'],
  value,
  ...more,
});
const unit = (exhibits: Exhibit[], parts: PartInput[] = []): CasePatch => ({ conductors: CONDUCTORS, parts, exhibits });
const judged = (exhibits: Exhibit[], parts: PartInput[] = [], id = PAIR): Finding => findingOf(judge(unit(exhibits, parts)), id);

describe('insulation from a mains pin to the output at 500 V', () => {
  it('more than 2 GΩ, as it is usual, passes as reinforced', () => {
    expect(judged([insulation('> 2 GOhm')])).toMatchObject({
      outcome: 'pass',
      rung: 'reinforcedMet',
      limit: { name: 'reinforced', at: { value: 7e6 }, grade: 'memory' },
    });
  });

  it('7 MΩ is undecided with basic met for certain; just inside passes', () => {
    const at = judged([insulation('7 MOhm ± 0.2 MOhm')]);
    expect(at).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty', rung: 'undecided' });
    expect(at.margin).toBeCloseTo(1, 9);
    expect(noteKeys(at)).toContain('basicMetRestUndecided');
    const inside = judged([insulation('7.2 MOhm ± 0.2 MOhm')]); // two standard uncertainties
    expect(inside).toMatchObject({ outcome: 'pass', rung: 'reinforcedMet' });
    expect(inside.probability).toBeCloseTo(0.977249868, 6);
  });

  it('just below 7 MΩ is basic only and injures, but on a figure from memory it carries no headline before 1.3 times', () => {
    expect(judged([insulation('6.5 MOhm ± 0.2 MOhm')])).toMatchObject({
      outcome: 'fail',
      rung: 'basicNotReinforced',
      consequence: 'injurious',
      headline: false,
    });
    expect(judged([insulation('4 MOhm ± 0.2 MOhm')])).toMatchObject({
      outcome: 'fail',
      rung: 'basicNotReinforced',
      consequence: 'injurious',
      headline: true,
    });
  });

  it('below 2 MΩ is below basic and lethal, on a figure that was read; 2 MΩ itself leaves basic open', () => {
    const below = judged([insulation('1.8 MOhm ± 0.1 MOhm')]);
    expect(below).toMatchObject({
      outcome: 'fail',
      rung: 'belowBasic',
      consequence: 'lethal',
      headline: true,
      limit: { name: 'basic', at: { value: 2e6 }, grade: 'secondary' },
    });
    expect(below.others.map(({ name }) => name)).toEqual(['reinforced']);
    expect(judge(unit([insulation('1.8 MOhm ± 0.1 MOhm')])).verdict.failure).toBe('Dangerous');
    expect(judged([insulation('2 MOhm ± 0.1 MOhm')])).toMatchObject({ rung: 'basicNotReinforced', consequence: 'injurious' });
  });

  it('a wide uncertainty is inconclusive, one that nobody stated too within a tenth of the limit', () => {
    expect(judged([insulation('9 MOhm ± 6 MOhm')])).toMatchObject({ outcome: 'inconclusive', rung: 'undecided' });
    expect(judged([insulation('7.4 MOhm')])).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown' });
    expect(judged([insulation('20 MOhm')]).outcome).toBe('pass');
  });

  it('towards earth basic is enough', () => {
    const earth = insulation('5 MOhm ± 0.1 MOhm', { between: ['earth', 'neutral'] });
    expect(judged([earth], [], 'shock/cold-insulation@neutral~earth')).toMatchObject({
      outcome: 'pass',
      rung: 'basicMet',
      limit: { name: 'basic' },
    });
  });
});

describe('the voltage at which it was read', () => {
  it('below 500 V, or not stated, it can only fail', () => {
    for (const more of [{ testVoltage: '250 V' }, { testVoltage: '499 V' }])
      expect(judged([insulation('> 2 GOhm', more)])).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    const { testVoltage: _none, ...unstated } = insulation('30 MOhm ± 1 MOhm');
    const finding = judged([unstated]);
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(noteKeys(finding)).toContain('insulationLowVoltage');
    expect(judged([insulation('1 MOhm ± 0.1 MOhm', { testVoltage: '250 V' })])).toMatchObject({ outcome: 'fail', consequence: 'lethal' });
  });

  it('at 1000 V a good reading is good', () => {
    expect(judged([insulation('> 2 GOhm', { testVoltage: '1 kV' })]).outcome).toBe('pass');
  });

  it('an ohmmeter that shows overrange proves nothing good; one that shows next to nothing has found a bridge', () => {
    expect(judged([resistance('> 40 MOhm')])).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(judged([resistance('0.3 Ohm ± 0.1 Ohm')])).toMatchObject({
      outcome: 'fail',
      rung: 'bridgedOrAbsent',
      consequence: 'lethal',
      headline: true,
    });
    expect(judged([resistance('47 kOhm ± 1 kOhm')])).toMatchObject({ outcome: 'fail', rung: 'belowBasic', consequence: 'lethal' });
  });

  it('the reading at 500 V settles what the ohmmeter leaves open, and the worst of both counts when the ohmmeter fails it', () => {
    expect(judged([resistance('> 40 MOhm'), insulation('> 2 GOhm')]).outcome).toBe('pass');
    expect(judged([resistance('1 Ohm ± 0.1 Ohm'), insulation('> 2 GOhm')])).toMatchObject({ outcome: 'fail', rung: 'bridgedOrAbsent' });
  });
});

describe('one-sided, and what is no reading', () => {
  it('above 3 MΩ leaves reinforced open, below 1 MΩ fails', () => {
    expect(judged([insulation('> 3 MOhm')])).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided', rung: 'undecided' });
    expect(judged([insulation('< 1 MOhm')])).toMatchObject({ outcome: 'fail', rung: 'belowBasic' });
  });

  it('nobody looked, struck, unknown, cannot now; a pair within one side is no matter of the barrier', () => {
    expect(findingsOf(judge(unit([])), 'shock/cold-insulation')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    expect(judged([insulation('1 MOhm', { struck: 'wet leads' })])).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
    expect(judged([insulation({ state: 'unknown', because: 'it drifted' })])).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(judged([insulation({ state: 'cannotNow', since: 'opened' })])).toMatchObject({ outcome: 'notAssessed', reason: 'cannotNow' });
    const poles = judge(unit([resistance('1 MOhm', { between: ['line', 'neutral'] })]));
    expect(findingsOf(poles, 'shock/cold-insulation')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    expect(poles.unjudged).toEqual([{ exhibit: 'res-1', kind: 'cold' }]);
  });

  it('a conductor nobody could place leaves the question open', () => {
    expect(judged([insulation('1 MOhm ± 0.1 MOhm', { between: ['line', 'screw'] })], [], 'shock/cold-insulation@line~screw')).toMatchObject(
      { outcome: 'inconclusive', reason: 'unknownValue' },
    );
  });
});

describe('a resistor that is recorded across the barrier', () => {
  const bleeder = (value: string): PartInput => across('r1', 'line', 'out-minus', { kind: 'resistor', value });
  it('explains 4.7 MΩ: neither a pass nor a fail, since the rules for such resistors are not held', () => {
    const finding = judged([insulation('4.8 MOhm ± 0.1 MOhm')], [bleeder('4.7 MOhm')]);
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'limitUnknown' });
    expect(noteKeys(finding)).toContain('insulationThroughResistor');
  });
  it('does not explain half of its value, and does not excuse what is felt: 253 V over 470 kΩ is 0.54 mA', () => {
    expect(judged([insulation('2.4 MOhm ± 0.1 MOhm')], [bleeder('4.7 MOhm')])).toMatchObject({
      outcome: 'fail',
      rung: 'basicNotReinforced',
    });
    expect(judged([insulation('470 kOhm ± 5 kOhm')], [bleeder('470 kOhm')])).toMatchObject({ outcome: 'fail', consequence: 'lethal' });
  });
});

describe('capacitance across the barrier before power', () => {
  const y1 = across('cy1', 'line', 'out-minus', { safetyClass: 'Y1', value: '1 nF' });
  const noted = (exhibits: Exhibit[], parts: PartInput[] = [y1]): string[] => noteKeys(judged(exhibits, parts));

  it('1.05 nF passes 0.083 mA at 253 V 50 Hz and agrees with a recorded 1 nF; alone it does not assess the insulation', () => {
    const assessment = judge(unit([capacitance('1.05 nF')], [y1]));
    expect(findingOf(assessment, PAIR)).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(noteKeys(findingOf(assessment, PAIR))).toEqual(['coldCapacitance', 'coldCapacitanceAgrees']);
    expect(assessment.steps.find(({ id }) => id.startsWith('cold/') && id.endsWith('/current'))?.value).toBeCloseTo(
      2 * Math.PI * 50 * 1.05e-9 * 253,
      12,
    );
  });

  it('3 nF against a recorded 1 nF is more, 0.3 nF is less; without a recorded part nothing is compared', () => {
    expect(noted([capacitance('3 nF')])).toContain('coldCapacitanceMore');
    expect(noted([capacitance('0.3 nF')])).toContain('coldCapacitanceLess');
    expect(noted([capacitance('3 nF')], [])).toEqual(['coldCapacitance']);
  });

  it('a touch current far above what the capacitance passes is said', () => {
    expect(noted([capacitance('1 nF'), touch('0.4 mA ± 0.01 mA')])).toContain('touchAboveCold');
    expect(noted([capacitance('1 nF'), touch('0.08 mA ± 0.01 mA')])).not.toContain('touchAboveCold');
  });
});
