import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, judge, noteKeys } from '../build-case.ts';
import { CONDUCTORS } from '../evidence-pieces.ts';

// Test voltage at 230 V, overvoltage category II: IEC 62368-1 tables 25 to 27, secondary (copy by an open magnetics library; a published report takes 4000 V d.c.):
// basic 2500 V, reinforced 4000 V, peak or d.c. IEC 60335-1 table 7: 3000 V rms, 4243 V peak. IEC 60950-1: 3000 V rms.
type Exhibit = NonNullable<CaseInput['exhibits']>[number];
type Strength = Extract<Exhibit, { kind: 'cold'; quantity: 'strength' }>;
const PAIR = 'shock/cold-insulation@line~out-minus';
const strength = (value: Strength['value'], more: Partial<Strength> = {}): Strength => ({
  id: 'strength-1',
  kind: 'cold',
  quantity: 'strength',
  between: ['line', 'out-minus'],
  form: 'dc',
  outcome: 'brokeDown',
  value,
  ...more,
});
const insulation: Exhibit = {
  id: 'ins-1',
  kind: 'cold',
  quantity: 'insulation',
  between: ['line', 'out-minus'],
  testVoltage: '500 V',
  value: '> 2 GOhm',
};
const judged = (exhibits: Exhibit[], id = PAIR, market: 'EU' | 'US' = 'EU'): Finding =>
  findingOf(judge({ setting: { market }, conductors: CONDUCTORS, exhibits }), id);

describe('insulation that broke down under a high voltage', () => {
  it('below 2500 V is below basic, lethal, and headlined on figures that were read', () => {
    expect(judged([strength('2.4 kV ± 0.05 kV')])).toMatchObject({
      outcome: 'fail',
      rung: 'belowBasic',
      consequence: 'lethal',
      headline: true,
      limit: { name: 'basicStrength', at: { value: 2500 }, grade: 'secondary' },
    });
  });

  it('between 2500 V and 4000 V is basic only and injures', () => {
    expect(judged([strength('3.5 kV ± 0.1 kV')])).toMatchObject({
      outcome: 'fail',
      rung: 'basicNotReinforced',
      consequence: 'injurious',
      headline: true,
      limit: { name: 'reinforcedStrength', at: { value: 4000 } },
    });
  });

  it('at 4000 V and above it leaves open what it would bear: never a pass', () => {
    for (const volts of ['4 kV ± 0.05 kV', '5 kV ± 0.05 kV'])
      expect(judged([strength(volts)])).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });

  it('an alternating voltage counts by its crest: 2.5 kV rms are 3.54 kV', () => {
    const finding = judged([strength('2.5 kV ± 0.01 kV', { form: 'ac' })]);
    expect(finding).toMatchObject({ outcome: 'fail', rung: 'basicNotReinforced' });
    expect('value' in finding.measured! ? finding.measured.value : 0).toBeCloseTo(3535.5339, 3);
  });

  it('the polarity of a direct voltage does not count', () => {
    expect(judged([strength('-2.4 kV ± 0.05 kV')])).toMatchObject({ outcome: 'fail', rung: 'belowBasic' });
  });

  it('on American mains the temporary overvoltage asks 2000 V and 4000 V', () => {
    expect(judged([strength('1.9 kV ± 0.05 kV')], PAIR, 'US').limit?.at?.value).toBe(2000);
  });

  it('of several readings the worst counts: breaking down outweighs any resistance', () => {
    expect(judged([insulation, strength('3.5 kV ± 0.1 kV')])).toMatchObject({ outcome: 'fail', rung: 'basicNotReinforced' });
  });

  it('other standards stand beside it as crests', () => {
    const others = judged([strength('3.5 kV ± 0.1 kV')]).others;
    expect(others.map(({ name, at }) => [name, Math.round(at!.value)])).toEqual([
      ['basicStrength', 2500],
      ['householdStrength', 4243],
      ['olderStrength', 4243],
    ]);
  });

  it('towards earth basic insulation is enough', () => {
    const towards = 'shock/cold-insulation@line~earth';
    const to = (volts: string): Finding => judged([strength(volts, { between: ['line', 'earth'] })], towards);
    expect(to('3.5 kV ± 0.1 kV').outcome).toBe('inconclusive');
    expect(to('2 kV ± 0.1 kV')).toMatchObject({ outcome: 'fail', rung: 'belowBasic' });
  });
});

describe('insulation that held', () => {
  it('is told and never passes: dry and as found is not the test', () => {
    const alone = judged([strength('4.2 kV ± 0.05 kV', { outcome: 'held', lasted: '60 s' })]);
    expect(alone).toMatchObject({ outcome: 'notAssessed' });
    expect(noteKeys(alone)).toEqual(expect.arrayContaining(['strengthHeld', 'strengthAsked']));
    expect(judged([insulation, strength('4.2 kV ± 0.05 kV', { outcome: 'held' })])).toMatchObject({
      outcome: 'pass',
      measured: { side: 'above' },
    });
  });

  it('at less than is asked shows little, and is said so', () => {
    expect(noteKeys(judged([strength('1 kV ± 0.05 kV', { outcome: 'held' })]))).toContain('strengthHeldLess');
  });
});

describe('what is not judged', () => {
  it('a struck test, an unknown one, one that nobody made', () => {
    expect(judged([strength('2 kV', { struck: 'wrong pins' })])).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
    expect(judged([strength({ state: 'unknown', because: 'the meter tripped by itself' })])).toMatchObject({ outcome: 'inconclusive' });
    expect(judged([strength({ state: 'notLooked' })])).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });

  it('what a laboratory would put across is told beside a plain resistance', () => {
    expect(judged([insulation]).notes).toContainEqual({ key: 'strengthAsked', args: { asked: 4000 } });
  });
});
