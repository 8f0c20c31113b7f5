import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Formula } from '../../src/core/formula/define-formula.ts';
import { derive } from '../../src/core/formula/derive.ts';
import { FORMULAS } from '../../src/core/formula/registry.ts';
import { lookUp } from '../../src/core/table/look-up.ts';
import { TABLES } from '../../src/core/table/registry.ts';
import { type Derived, doubtOf, given, uncertainty } from '../../src/core/trace/derived.ts';
import { FEW, SEED } from './seed.ts';

const RUN = { seed: SEED, numRuns: FEW };
/** What a bench meets, by SI unit. */
const USUAL: Readonly<Record<string, readonly [least: number, most: number]>> = {
  V: [1, 400],
  A: [0.01, 10],
  W: [1, 200], // below 1 W the logarithm of the efficiency curve turns its factor around; there the regulation has no logarithm
  K: [250, 450],
  m: [1e-4, 2e-2],
  Hz: [45, 65],
  F: [1e-10, 1e-7],
  Ω: [0.01, 1],
  s: [0.5, 5],
  J: [0.01, 10],
  'A²s': [0.01, 10],
  '1': [0.65, 0.99],
};
/** Other sizes where a discharge through a bleeder or a probe is meant. */
const DISCHARGE: Readonly<Record<string, readonly [least: number, most: number]>> = { Ω: [1e5, 1e7], F: [1e-8, 1e-6] };
/** What must hold between the inputs for the formula to mean anything. */
const MEANS_SOMETHING: Readonly<Record<string, (plain: Readonly<Record<string, number>>) => boolean>> = {
  'board/valley-after': ({ interval, conduction }) => interval! > conduction!,
  'board/hold-up': ({ valley, end }) => valley! > end!,
  'insulation/layers-of-distance': ({ basic, reinforced }) => reinforced! > basic! * 1.01,
  'magnetics/clamp-power': ({ clamp, reflected }) => clamp! > reflected! * 1.01,
  'magnetics/continuous-power': ({ peak, rise }) => peak! > rise!,
  'magnetics/continuous-rms': ({ peak, rise }) => peak! > rise!,
  // cooling that can be carried back: hotter first, well above the room, and time between the readings
  'thermal/at-opening': ({ first, second, ambient, firstAfter, secondAfter }) =>
    first! > second! * 1.01 && second! > ambient! * 1.01 && secondAfter! > firstAfter! * 1.2,
  'touch/bound-over-tries': ({ chance }) => chance! < 1,
  'touch/least-capacitance': ({ start, read }) => start! > read! * 1.01,
  'touch/residual-at-moment': ({ start, voltage }) => start! > voltage!,
};

const inputsOf = (formula: Formula) =>
  fc.record(
    Object.fromEntries(
      Object.entries(formula.inputs).map(([name, { unit, from, to }]) => {
        const [least, most] = (formula.id.startsWith('touch/') ? DISCHARGE[unit] : undefined) ?? USUAL[unit] ?? [1, 2];
        const start = Math.max(least, from ?? least);
        return [name, fc.double({ min: start, max: Math.max(start * 1.5, Math.min(most, to ?? most)), noNaN: true })];
      }),
    ),
  );

const kept = (formula: Formula, plain: Readonly<Record<string, number>>, side: Readonly<Record<string, 'below' | 'above'>>): Derived => {
  const inputs = Object.fromEntries(
    Object.entries(formula.inputs).map(([name, { unit }]) => {
      const bound = side[name];
      const doubt = bound === undefined ? { form: doubtOf({ id: name, u: Math.abs(plain[name]!) * 1e-3, means: name }) } : { side: bound };
      return [name, given('reading', plain[name]!, unit, { id: name, name }, doubt)];
    }),
  );
  return derive(formula, inputs, 'result');
};

/** Two inputs that cannot meet: a line between two rows of one current or one voltage. */
const usable = (formula: Formula, plain: Readonly<Record<string, number>>): boolean =>
  Number.isFinite(formula.compute(plain)) && (MEANS_SOMETHING[formula.id]?.(plain) ?? true);

const declared = FORMULAS.flatMap((formula) => Object.keys(formula.inputs).map((name) => [formula.id, name, formula] as const));
const moving = declared.filter(([, name, formula]) => formula.inputs[name]!.moves !== undefined);

describe('a bound that goes into a formula', () => {
  it.each(declared)('%s, %s: never comes out as a plain value', (_, name, formula) => {
    fc.assert(
      fc.property(inputsOf(formula), fc.constantFrom('below' as const, 'above' as const), (plain, side) => {
        fc.pre(usable(formula, plain));
        const result = kept(formula, plain, { [name]: side });
        expect(result.side).toBeDefined();
        expect(result.step.side).toBe(result.side);
        expect(uncertainty(result)).toBeNull();
        const { moves } = formula.inputs[name]!;
        const other = side === 'below' ? 'above' : 'below';
        expect(result.side).toBe(moves === undefined ? 'anywhere' : moves === 'up' ? side : other);
      }),
      { seed: SEED, numRuns: 20 },
    );
  });

  it.each(moving)('%s, %s: holds what is really there', (_, name, formula) => {
    fc.assert(
      fc.property(inputsOf(formula), fc.double({ min: 0.9, max: 1.1, noNaN: true }), (plain, ratio) => {
        const truth = plain[name]! * ratio; // where the value really lies
        fc.pre(usable(formula, plain) && usable(formula, { ...plain, [name]: truth }));
        const side = truth <= plain[name]! ? 'below' : 'above';
        const bound = kept(formula, plain, { [name]: side });
        const really = formula.compute({ ...plain, [name]: truth });
        const lastBits = 1e-9 * Math.max(Math.abs(really), Math.abs(bound.value));
        if (bound.side === 'below') expect(really).toBeLessThanOrEqual(bound.value + lastBits);
        else expect(really).toBeGreaterThanOrEqual(bound.value - lastBits);
      }),
      RUN,
    );
  });

  const pairs = FORMULAS.filter((formula) => Object.values(formula.inputs).filter(({ moves }) => moves !== undefined).length >= 2);
  it.each(pairs.map((formula) => [formula.id, formula] as const))(
    '%s: bounds that pull both ways leave it anywhere, bounds that pull one way keep it',
    (_, formula) => {
      const [one, two] = Object.keys(formula.inputs).filter((name) => formula.inputs[name]!.moves !== undefined) as [string, string];
      const alike = formula.inputs[one]!.moves === formula.inputs[two]!.moves;
      fc.assert(
        fc.property(inputsOf(formula), (plain) => {
          fc.pre(MEANS_SOMETHING[formula.id]?.(plain) ?? true);
          expect(kept(formula, plain, { [one]: 'below', [two]: alike ? 'above' : 'below' }).side).toBe('anywhere');
          expect(kept(formula, plain, { [one]: 'below', [two]: alike ? 'below' : 'above' }).side).not.toBe('anywhere');
        }),
        { seed: SEED, numRuns: 20 },
      );
    },
  );
});

describe('a bound that a table is entered with', () => {
  const entered = TABLES.filter(({ lookUp: rule }) => rule !== 'exact key');

  /** Which way the first column goes: a bound keeps its side where it rises, turns round where it falls, and is lost where it does both. */
  const sideOut = (table: (typeof entered)[number], side: 'below' | 'above'): 'below' | 'above' | 'anywhere' => {
    const cells = table.rows.flatMap(([, cell]) => (typeof cell === 'number' ? [cell] : []));
    const steps = cells.slice(1).map((cell, index) => Math.sign(cell - cells[index]!));
    if (!steps.includes(-1)) return side;
    return steps.includes(1) ? 'anywhere' : side === 'below' ? 'above' : 'below';
  };

  it.each(entered.map((table) => [table.id, table] as const))('%s: comes out as the bound that its cells leave', (_, table) => {
    const middle = (table.rows[1]![0] as number) * table.key.factor;
    for (const side of ['below', 'above'] as const) {
      const key = given('reading', middle, table.key.si as 'V', { id: 'key', name: 'key' }, { side });
      const found = lookUp(table, key, Object.keys(table.columns)[0]!, 'cell', 'x')!;
      expect(found.side).toBe(sideOut(table, side));
      expect(uncertainty(found)).toBeNull();
    }
  });
});

describe('what a formula says of itself', () => {
  it.each(FORMULAS.map((formula) => [formula.id, formula] as const))(
    '%s: every symbol of its inputs stands in its line of text',
    (_, formula) => {
      for (const { symbol } of Object.values(formula.inputs)) expect(formula.text).toContain(symbol);
      expect(formula.text).toContain(formula.output.symbol);
    },
  );
});
