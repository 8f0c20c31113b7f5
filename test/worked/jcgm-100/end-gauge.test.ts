import { describe, expect, it } from 'vitest';
import { combine } from '../../../src/core/trace/combine.ts';
import { type Derived, doubtOf, given, uncertainty } from '../../../src/core/trace/derived.ts';
import { rectangular } from '../../../src/core/uncertainty/half-width.ts';
import { END_GAUGE, END_GAUGE_PRINTED } from './h1.ts';

const input = (id: keyof typeof END_GAUGE, u: number): Derived =>
  given('reading', END_GAUGE[id].value, '1', { id, name: id }, { form: doubtOf({ id, u, means: id }) });

const INPUTS = {
  standard: input('standard', END_GAUGE.standard.u),
  difference: input('difference', END_GAUGE.difference.u),
  comparatorRandom: input('comparatorRandom', END_GAUGE.comparatorRandom.u),
  comparatorSystematic: input('comparatorSystematic', END_GAUGE.comparatorSystematic.u),
  expansionOfStandard: input('expansionOfStandard', rectangular(END_GAUGE.expansionOfStandard.halfWidth)),
  differenceOfExpansion: input('differenceOfExpansion', rectangular(END_GAUGE.differenceOfExpansion.halfWidth)),
  differenceOfTemperature: input('differenceOfTemperature', rectangular(END_GAUGE.differenceOfTemperature.halfWidth)),
  meanDeviation: input('meanDeviation', END_GAUGE.meanDeviation.u),
  cycle: input('cycle', END_GAUGE.cycle.amplitude / Math.SQRT2), // a sine spends most time at its ends
};
type Name = keyof typeof INPUTS;

const gauge = combine<Name>(
  {
    kind: 'formula',
    unit: '1',
    formula: null,
    symbols: Object.fromEntries(Object.keys(INPUTS).map((name) => [name, name])) as Record<Name, string>,
    compute: (x) =>
      x.standard +
      x.difference +
      x.comparatorRandom +
      x.comparatorSystematic -
      x.standard * (x.differenceOfExpansion * (x.meanDeviation + x.cycle) + x.expansionOfStandard * x.differenceOfTemperature),
  },
  INPUTS,
  { id: 'length', name: 'length' },
);

describe('the end gauge of JCGM 100, H.1', () => {
  it('is 50 000 838 nm long with a standard uncertainty of 32 nm', () => {
    expect(Math.round(gauge.value)).toBe(END_GAUGE_PRINTED.length);
    expect(Math.round(uncertainty(gauge) ?? Number.NaN)).toBe(END_GAUGE_PRINTED.u);
  });

  it.each(Object.entries(END_GAUGE_PRINTED.components))('owes to its input %s a component of %d nm', (name, printed) => {
    const term = gauge.form.get(name);
    const component = term === undefined ? 0 : Math.abs(term.c * (term.leaf.u ?? Number.NaN));
    expect(Math.abs(component - printed)).toBeLessThanOrEqual(0.05);
  });

  it('owes more than half of its variance to the standard', () => {
    const share = END_GAUGE.standard.u ** 2 / (uncertainty(gauge) ?? Number.NaN) ** 2;
    expect(share).toBeGreaterThan(0.5);
    expect(share).toBeLessThan(0.7);
  });
});
