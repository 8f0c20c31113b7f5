import { describe, expect, it } from 'vitest';
import type { Assessment, Step } from '../../src/core/result/assessment.ts';
import { shareText, toBudget } from '../../src/present/derivation/budget-line.ts';
import { listSources } from '../../src/present/derivation/source-text.ts';
import { formulaWithNumbers, splitAtSymbols, stepDoubt, stepResult } from '../../src/present/derivation/step-text.ts';
import { assessmentOf, sourceOf, stepOf } from './build-assessment.ts';
import { fullAssessment } from './sample-assessment.ts';

/** A formula step with the steps that go into it. */
function worked(text: string, inputs: Readonly<Record<string, Partial<Step>>>): { step: Step; assessment: Assessment } {
  const used = Object.entries(inputs).map(([symbol, more]) => stepOf(`in/${symbol}`, { symbol, u: 0, ...more }));
  const step = stepOf('out', {
    kind: 'formula',
    formula: 'f',
    value: 1,
    unit: 'W',
    u: 0,
    uses: used.map((one) => ({ step: one.id, symbol: one.symbol ?? '', sensitivity: null })),
  });
  const formulas = { f: { tex: '', text, validity: 'none given', symbol: 'P', means: 'power', inputs: [] } };
  return { step, assessment: assessmentOf({ steps: [...used, step], formulas }) };
}

function numbers(text: string, inputs: Readonly<Record<string, Partial<Step>>>): string | undefined {
  const { step, assessment } = worked(text, inputs);
  return formulaWithNumbers(step, assessment)?.replace(/\u00a0/g, ' ');
}

describe('a formula with its numbers', () => {
  it('puts each number where its symbol stands, and leaves letters inside other words alone', () => {
    expect(
      numbers('P = max( V_a ; V ) · a', { V: { value: 5, unit: 'V' }, V_a: { value: 4, unit: 'V' }, a: { value: 2, unit: '1' } }),
    ).toBe('max( 4 V ; 5 V ) · 2');
    expect(numbers("d' = d rounded up", { d: { value: 0.0031, unit: 'm' } })).toBe('3.1 mm rounded up');
  });

  it('puts brackets around what is raised to a power and around what is negative', () => {
    expect(numbers('P = V² / R', { V: { value: 5, unit: 'V' }, R: { value: 10, unit: 'Ω' } })).toBe('(5 V)² / 10 Ω');
    expect(numbers('P = 1 + s · w', { s: { value: -1, unit: '1' }, w: { value: 0.05, unit: '1' } })).toBe('1 + (−1) · 0.05');
  });

  it('keeps temperatures in kelvin, in which they are multiplied', () => {
    expect(numbers('P = k · T', { k: { value: 2, unit: '1' }, T: { value: 383.15, unit: 'K' } })).toBe('2 · 383.15 K');
  });

  it('gives a reading the digits its uncertainty allows', () => {
    expect(numbers('P = V · 1', { V: { value: 11.6581, unit: 'V', u: 0.0074 } })).toBe('11.658 V · 1');
  });

  it('is not shown for a step without a formula', () => {
    const { assessment } = worked('P = V', { V: { value: 5, unit: 'V' } });
    expect(formulaWithNumbers(stepOf('plain', { value: 1, unit: 'V' }), assessment)).toBe(null);
  });

  it('can be cut into its symbols', () => {
    expect(splitAtSymbols('2π · f · C_Y', ['f', 'C_Y'])).toEqual(['2π · ', 'f', ' · ', 'C_Y', '']);
    expect(splitAtSymbols('no symbol', [])).toEqual(['no symbol']);
  });
});

describe('a result', () => {
  it('says a bound, an exact value and an unknown uncertainty apart', () => {
    expect([
      stepResult(stepOf('a', { value: 0.1, unit: 'V', side: 'below' })),
      stepDoubt(stepOf('a', { value: 0.1, unit: 'V', side: 'below' })),
    ]).toEqual(['below 100\u00a0mV', 'a bound only']);
    expect(stepDoubt(stepOf('a', { value: 1, unit: 'V', u: 0 }))).toBe('taken as exact');
    expect(stepDoubt(stepOf('a', { value: 1, unit: 'V', u: null }))).toBe('uncertainty not known');
    expect(stepResult(stepOf('a', { kind: 'choice', word: 'II' }))).toBe('II');
  });
});

describe('a budget', () => {
  it('gives the doubt of a temperature in kelvin, without the offset of the scale', () => {
    const step = stepOf('t', {
      value: 353.15,
      unit: 'K',
      u: 1.234,
      budget: [{ leaf: 'x', means: 'resolution', args: {}, u: 1.234, share: 1 }],
    });
    expect(toBudget(step).lines[0]?.amount).toBe('1.2\u00a0K');
  });

  it('says how many lines are left out', () => {
    const budget = Array.from({ length: 11 }, (_, index) => ({ leaf: `${index}`, means: 'resolution', args: {}, u: 1, share: 1 / 11 }));
    const { lines, left } = toBudget(stepOf('t', { value: 1, unit: 'V', u: 1, budget }));
    expect([lines.length, left]).toEqual([8, 3]);
  });

  it('never rounds a share that is there down to nothing', () => {
    expect([shareText(0.002), shareText(0.5), shareText(null), shareText(0)]).toEqual([
      'under 1\u00a0%',
      '50\u00a0%',
      'not known',
      '0\u00a0%',
    ]);
  });
});

describe('the sources', () => {
  it('are listed once each, whoever names them, in a fixed order', () => {
    const places = listSources(fullAssessment()).map(({ place, grade }) => `${place} ${grade}`);
    expect(new Set(places).size).toBe(places.length);
    expect([...places].sort()).toEqual(places);
    expect(places).toContain('table F.4 secondary');
    expect(
      listSources(assessmentOf({ setting: { mains: { value: '230 V', from: 'default', source: sourceOf('memory', 'here') } } })).map(
        ({ place }) => place,
      ),
    ).toEqual(['here']);
  });
});
