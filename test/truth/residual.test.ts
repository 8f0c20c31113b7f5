import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../src/core/evidence/case.ts';
import type { Assessment } from '../../src/core/result/assessment.ts';
import { residualText } from '../../src/present/words/energy-words.ts';
import { type CasePatch, judge } from './build-case.ts';
import { board, type PartInput } from './evidence-pieces.ts';

// Direct voltage that may be touched: 60 V, IEC 62368-1 table 4 ES1 (secondary: text extract of a national regulation). Energy C V² / 2: 10 µF at 143 V hold 0.1022 J.
type Residual = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'residual' }>;
const C1: PartInput = { id: 'c1', ref: 'C1', kind: 'electrolyticCapacitor', value: '10 µF', rating: { tolerance: '0 %' } };
const left = (more: Partial<Residual>): Residual => ({
  id: 'residual-1',
  kind: 'residual',
  across: 'c1',
  value: '143 V ± 1 V',
  after: '20 s',
  ...more,
});
const unit = (...exhibits: Residual[]): CasePatch => ({
  parts: [C1],
  exhibits: [board({ bulk: ['c1'], rectifier: 'bridge' }), ...exhibits],
});
const residuals = (...exhibits: Residual[]): NonNullable<Assessment['residuals']> => judge(unit(...exhibits)).residuals ?? [];

describe('what somebody measured on the capacitor before touching it', () => {
  it('143 V after 20 s is above 60 V and holds 0.10 J', () => {
    const [one] = residuals(left({}));
    expect(one).toMatchObject({
      across: 'C1',
      limit: { at: { value: 60 }, grade: 'secondary' },
      first: { after: 20, touchable: 'above' },
      later: null,
    });
    expect(one?.first.energy?.value).toBeCloseTo(0.5 * 10e-6 * 143 * 143, 9);
    expect(residualText(one!).replaceAll('\u00a0', ' ')).toBe(
      'C1: 143.0 ± 1.0 V (100 mJ) 20 s after unplugging, above the 60 V that may be touched; not read a second time.',
    );
  });

  it('61 V good to 5 V is too near to tell, 40 V is not above', () => {
    expect(residuals(left({ value: '61 V ± 5 V' }))[0]?.first.touchable).toBe('unclear');
    expect(residuals(left({ value: '40 V ± 1 V' }))[0]?.first.touchable).toBe('below');
  });

  it('a second reading that is higher says that charge came back', () => {
    const [one] = residuals(left({ value: '4 V', later: { value: '19 V', after: '80 s' } }));
    expect(one?.later).toMatchObject({ after: 80, touchable: 'below' });
    expect(residualText(one!)).toContain('charge came back');
  });

  it('either polarity is the same to a hand', () => expect(residuals(left({ value: '-143 V ± 1 V' }))[0]?.first.touchable).toBe('above'));

  it('without a part all bulk capacitors count; without a board no energy is told', () => {
    const { across: _left, ...bare } = left({});
    expect(residuals(bare)[0]).toMatchObject({ across: null, first: { energy: { value: expect.closeTo(0.102245, 6) } } });
    expect(judge({ exhibits: [bare] }).residuals?.[0]?.first.energy).toBeNull();
  });

  it('nothing read, struck or not looked is nothing told, and no finding of the unit moves', () => {
    expect(residuals(left({ value: { state: 'notLooked' } }))).toEqual([]);
    expect(residuals(left({ struck: 'on the wrong part' }))).toEqual([]);
    expect(judge(unit()).residuals).toBeUndefined();
    expect(judge(unit(left({}))).findings).toEqual(judge(unit()).findings);
  });

  it('carries its derivation', () => {
    const assessment = judge(unit(left({})));
    const { step, energy } = assessment.residuals![0]!.first;
    for (const id of [step, energy!.step]) expect(assessment.steps.map((one) => one.id)).toContain(id);
  });

  it('names a part that is there', () => expect(() => judge({ exhibits: [left({ across: 'c9' })] })).toThrow(/c9/));
});
