import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combine } from '../../src/core/trace/combine.ts';
import { type Derived, doubtOf, given, uncertainty } from '../../src/core/trace/derived.ts';
import { addForms, covarianceOf, type Leaf, uncertaintyOf } from '../../src/core/trace/leaf.ts';
import { FEW, MANY, SEED } from './seed.ts';

const RUN = { seed: SEED, numRuns: MANY };
const EPSILON = 2 ** -52;
const STEP_SHARE = 0.25; // of the standard uncertainty: how far the engine moves an input to see the slope

const value = fc.double({ min: -1000, max: 1000, noNaN: true });
const factor = fc.double({ min: -50, max: 50, noNaN: true });
const doubt = fc.double({ min: 1e-3, max: 10, noNaN: true });
const term = fc.record({ a: factor, x: value, u: doubt });
type Term = { a: number; x: number; u: number };

function reading(id: string, x: number, u: number | null, correlated?: ReadonlyMap<string, number>): Derived {
  const leaf: Leaf = { id, u, means: id, ...(correlated === undefined ? {} : { correlated }) };
  return given('reading', x, '1', { id, name: id }, { form: doubtOf(leaf) });
}

function of(
  inputs: Readonly<Record<string, Derived>>,
  compute: (plain: Readonly<Record<string, number>>) => number,
  id = 'result',
): Derived {
  const symbols = Object.fromEntries(Object.keys(inputs).map((name) => [name, name]));
  return combine({ kind: 'formula', unit: '1', formula: null, symbols, compute }, inputs, { id, name: id });
}

const inputsOf = (terms: readonly Term[]): Record<string, Derived> =>
  Object.fromEntries(terms.map(({ x, u }, index) => [`x${index}`, reading(`x${index}`, x, u)]));
const linear =
  (terms: readonly Term[], constant = 0) =>
  (plain: Readonly<Record<string, number>>): number =>
    terms.reduce((sum, { a }, index) => sum + a * plain[`x${index}`]!, constant);
const u = (one: Derived): number => uncertainty(one) ?? Number.NaN;
const slack = (terms: readonly Term[]): number => terms.reduce((sum, one) => sum + Math.abs(one.a) * (Math.abs(one.x) + one.u), 1);

describe('a linear function', () => {
  const terms = fc.array(term, { minLength: 1, maxLength: 6 });

  it('has exactly its own factors as sensitivities, but for the last bits of the difference', () => {
    fc.assert(
      fc.property(terms, value, (list, constant) => {
        const result = of(inputsOf(list), linear(list, constant));
        for (const [index, { a, u: doubtful }] of list.entries()) {
          const lastBits = (8 * EPSILON * (slack(list) + Math.abs(constant))) / (STEP_SHARE * doubtful);
          expect(Math.abs((result.form.get(`x${index}`)?.c ?? 0) - a)).toBeLessThanOrEqual(lastBits);
        }
      }),
      RUN,
    );
  });

  it('has the root of the sum of squares as its uncertainty when its inputs are independent', () => {
    fc.assert(
      fc.property(terms, (list) => {
        const direct = Math.hypot(...list.map(({ a, u: doubtful }) => a * doubtful));
        expect(Math.abs(u(of(inputsOf(list), linear(list))) - direct)).toBeLessThanOrEqual(1e-9 * slack(list));
      }),
      RUN,
    );
  });

  it('does not care for the order of its inputs', () => {
    fc.assert(
      fc.property(terms, (list) => {
        const inputs = inputsOf(list);
        const reversed = Object.fromEntries(Object.entries(inputs).reverse());
        expect(u(of(reversed, linear(list)))).toBeCloseTo(u(of(inputs, linear(list))), 9);
      }),
      RUN,
    );
  });

  it('worked out in two steps has the same uncertainty as in one', () => {
    fc.assert(
      fc.property(term, term, term, (one, two, three) => {
        const list = [one, two, three];
        const { x0, x1, x2 } = inputsOf(list) as Record<'x0' | 'x1' | 'x2', Derived>;
        const first = of({ x0, x1 }, (plain) => one.a * plain['x0']! + two.a * plain['x1']!, 'first');
        const second = of({ first, x2 }, (plain) => plain['first']! + three.a * plain['x2']!, 'second');
        expect(Math.abs(u(second) - u(of(inputsOf(list), linear(list))))).toBeLessThanOrEqual(1e-9 * slack(list));
      }),
      RUN,
    );
  });
});

describe('an uncertainty', () => {
  const correlation = fc.double({ min: -1, max: 1, noNaN: true });
  const three = fc.tuple(term, term, term, correlation, correlation, correlation);

  it('is never negative and never nothing at all, whatever correlations are declared', () => {
    fc.assert(
      fc.property(three, ([one, two, last, r01, r02, r12]) => {
        const partners = [
          new Map([
            ['x1', r01],
            ['x2', r02],
          ]),
          new Map([
            ['x0', r01],
            ['x2', r12],
          ]),
          new Map([
            ['x0', r02],
            ['x1', r12],
          ]),
        ];
        const list = [one, two, last];
        const inputs = Object.fromEntries(
          list.map(({ x, u: doubtful }, index) => [`x${index}`, reading(`x${index}`, x, doubtful, partners[index])]),
        );
        expect(u(of(inputs, linear(list)))).toBeGreaterThanOrEqual(0);
      }),
      RUN,
    );
  });

  it('of two correlated inputs lies between that of their difference and that of their sum', () => {
    fc.assert(
      fc.property(term, term, correlation, (one, two, r) => {
        const inputs = { x0: reading('x0', one.x, one.u, new Map([['x1', r]])), x1: reading('x1', two.x, two.u, new Map([['x0', r]])) };
        const found = u(of(inputs, linear([one, two])));
        const [p, q] = [Math.abs(one.a) * one.u, Math.abs(two.a) * two.u];
        const lastBits = 1e-6 * (1 + p + q);
        expect(found).toBeGreaterThanOrEqual(Math.abs(p - q) - lastBits);
        expect(found).toBeLessThanOrEqual(p + q + lastBits);
      }),
      RUN,
    );
  });

  it('is the root of the covariance of a form with itself', () => {
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 5 }), (list) => {
        const { form } = of(inputsOf(list), linear(list));
        expect(Math.sqrt(covarianceOf(form, form) ?? Number.NaN)).toBeCloseTo(uncertaintyOf(form) ?? Number.NaN, 9);
      }),
      RUN,
    );
  });

  it('of a value taken from itself is nothing', () => {
    fc.assert(
      fc.property(term, (one) => {
        const x0 = reading('x0', one.x, one.u);
        expect(u(of({ left: x0, right: x0 }, (plain) => plain['left']! - plain['right']!))).toBeLessThanOrEqual(1e-9);
      }),
      RUN,
    );
  });

  it('of a ratio of values with a common gain owes nothing to the gain', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 100, noNaN: true }), fc.double({ min: 1, max: 100, noNaN: true }), (over, under) => {
        const gain: Leaf = { id: 'gain', u: 0.01, means: 'gain' };
        const by = (id: string, x: number) => given('reading', x, '1', { id, name: id }, { form: doubtOf(gain, x) });
        expect(
          u(of({ over: by('over', over), under: by('under', under) }, (plain) => plain['over']! / plain['under']!)),
        ).toBeLessThanOrEqual(2e-5 * (over / under));
      }),
      RUN,
    );
  });

  it('that is unknown in one input that matters is unknown in the result', () => {
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 4 }), value, (list, x) => {
        const inputs = { ...inputsOf(list), unknown: reading('unknown', x, null) };
        expect(uncertainty(of(inputs, (plain) => linear(list)(plain) + plain['unknown']!))).toBeNull();
        expect(uncertainty(of(inputs, linear(list)))).not.toBeNull();
      }),
      { seed: SEED, numRuns: FEW },
    );
  });
});

describe('a sensitivity that is only printed', () => {
  it('of a value without any doubt is the slope at that value, for a curve too', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1000, noNaN: true }), fc.double({ min: 1, max: 1000, noNaN: true }), (over, under) => {
        const exact = (id: string, x: number) => given('typed', x, '1', { id, name: id });
        const { step } = of({ over: exact('over', over), under: exact('under', under) }, (plain) => plain['over']! / plain['under']!);
        const slope = -over / (under * under);
        expect(Math.abs((step.uses[1]?.sensitivity ?? Number.NaN) - slope)).toBeLessThanOrEqual(1e-5 * Math.abs(slope));
        expect(step.u).toBe(0);
      }),
      RUN,
    );
  });
});

describe('forms', () => {
  it('add up leaf by leaf', () => {
    fc.assert(
      fc.property(factor, factor, factor, factor, (p, q, a, b) => {
        const leaf: Leaf = { id: 'x', u: 1, means: 'x' };
        const sum = addForms([
          { form: doubtOf(leaf, a), factor: p },
          { form: doubtOf(leaf, b), factor: q },
        ]);
        expect(sum.get('x')?.c ?? 0).toBeCloseTo(p * a + q * b, 9);
      }),
      RUN,
    );
  });
});
