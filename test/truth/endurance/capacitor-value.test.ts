import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge } from '../build-case.ts';
import type { InstrumentInput, PartInput } from '../evidence-pieces.ts';

// At least 80 % of the marked value: common practice, so a failure is a disappointment at most.
const METER: InstrumentInput = {
  id: 'lcr',
  name: 'bridge, invented',
  ranges: [{ of: 'capacitance', resolution: '0.001 µF', accuracy: '0.1 µF', basis: 'standard' }],
};
const can = (value: PartInput['value'], measured: PartInput['measured'], kind: PartInput['kind'] = 'electrolyticCapacitor'): CasePatch => ({
  instruments: [METER],
  parts: [{ id: 'c1', ref: 'C1', kind, ...(value === undefined ? {} : { value }), ...(measured === undefined ? {} : { measured }) }],
});
const judged = (...args: Parameters<typeof can>): Finding => findingOf(judge(can(...args)), 'endurance/capacitor-value@c1');

describe('the value of a capacitor', () => {
  it('8.0 µF of 10 µF is undecided, 8.2 µF passes, 7.8 µF fails, two standard uncertainties away', () => {
    expect(judged('10 µF', '8.0 µF ± 0.2 µF')).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    const inside = judged('10 µF', '8.2 µF ± 0.2 µF');
    expect(inside).toMatchObject({ outcome: 'pass', show: 'percent', limit: { grade: 'common-practice' } });
    expect(inside.probability).toBeCloseTo(0.977249868, 5);
    expect(inside.margin).toBeCloseTo(0.8 / 0.82, 9);
    expect(judged('10 µF', '7.8 µF ± 0.2 µF')).toMatchObject({ outcome: 'fail', consequence: 'disappointing' });
  });

  it('a can of 4.7 µF sold as 10 µF lets the unit fall below its claims', () => {
    expect(judge(can('10 µF', '4.7 µF ± 0.1 µF')).verdict.failure).toBe('Below its claims');
  });

  it('the doubt is that of the meter named on the reading', () => {
    const finding = judged('10 µF', { v: '9.0 µF', instrument: 'lcr' });
    expect('value' in finding.measured! ? finding.measured.u : 0).toBeCloseTo(0.01, 5);
    expect(finding.outcome).toBe('pass');
  });

  it('without a doubt a reading within a tenth of the limit is open, a wide doubt always', () => {
    expect(judged('10 µF', '8.5 µF')).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown' });
    expect(judged('10 µF', '9.5 µF').outcome).toBe('pass');
    expect(judged('10 µF', '9 µF ± 4 µF').outcome).toBe('inconclusive');
  });

  it('bounds are one-sided', () => {
    expect(judged('10 µF', '> 9 µF').outcome).toBe('pass');
    expect(judged('10 µF', '< 1 µF').outcome).toBe('fail');
    expect(judged('10 µF', '< 9 µF')).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });

  it('a film capacitor is asked, a ceramic one and one without any value are not', () => {
    expect(judged('100 nF', '60 nF ± 1 nF', 'filmCapacitor').outcome).toBe('fail');
    for (const patch of [can('100 nF', '60 nF ± 1 nF', 'ceramicCapacitor'), can(undefined, undefined), {}])
      expect(findingsOf(judge(patch), 'endurance/capacitor-value')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });

  it('half of the pair missing is not assessed, unreadable inconclusive, struck and cannot now not assessed', () => {
    expect(judged('10 µF', undefined)).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged(undefined, '8 µF ± 0.1 µF')).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
    expect(judged({ state: 'unknown', because: 'sleeve gone' }, '8 µF ± 0.1 µF')).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(judged('10 µF', { state: 'cannotNow', since: 'burnt' })).toMatchObject({ outcome: 'notAssessed', reason: 'cannotNow' });
    expect(judged('10 µF', { v: '1 µF', struck: 'in circuit' })).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
    expect(judged('brown and round', '8 µF ± 0.1 µF').outcome).toBe('inconclusive');
  });
});
