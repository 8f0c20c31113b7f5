import type { SiUnit } from '../quantity/unit.ts';
import type { Chosen, Derived, Origin } from './derived.ts';
import { addForms, type Form, uncertaintyOf } from './leaf.ts';
import type { Note, StepKind, StepNode } from './step.ts';

/** What `combine` needs to know of the arithmetic; a formula or a table look-up fills it in. */
export interface Arithmetic<Name extends string> {
  readonly kind: StepKind;
  readonly unit: SiUnit;
  readonly formula: string | null;
  readonly symbols: Readonly<Record<Name, string>>;
  readonly compute: (plain: Readonly<Record<Name, number>>) => number;
  /** dValue/dInput where the central difference would mislead (rounding) or is known. */
  readonly sensitivity?: (plain: Readonly<Record<Name, number>>) => Partial<Record<Name, number>>;
  /** Which way the value moves with each input; an input left out here turns a one-sided value into "anywhere". */
  readonly moves?: Readonly<Partial<Record<Name, 'up' | 'down'>>>;
  /** Name of the branch taken, for steps that are not smooth: a table row, the larger of two, a rounding step. */
  readonly branch?: (plain: Readonly<Record<Name, number>>) => string;
}

const STEP_SHARE = 0.25; // central difference at a quarter of the standard uncertainty
const BLIND_STEP = 1e-6; // relative step where the input has no uncertainty: only the printed sensitivity uses it
const STRADDLE = 2; // an unsmooth step is also tried this many standard uncertainties away

/** Derived in, Derived out: value, linear form, one-sidedness, the branches that the uncertainty straddles, and the step. */
export function combine<Name extends string>(
  arithmetic: Arithmetic<Name>,
  inputs: Readonly<Record<Name, Derived>>,
  origin: Origin,
  choices: Readonly<Record<string, Chosen>> = {},
): Derived {
  const names = Object.keys(inputs) as Name[];
  const plain = {} as Record<Name, number>;
  for (const name of names) plain[name] = inputs[name].value;
  const value = arithmetic.compute(plain);
  if (!Number.isFinite(value)) throw new Error(`${origin.id}: the arithmetic gave ${value}`);

  const known: Partial<Record<Name, number>> = arithmetic.sensitivity?.(plain) ?? {};
  const sensitivities = names.map((name) => known[name] ?? slope(arithmetic.compute, plain, name, inputs[name]));
  const form = addForms(names.map((name, index) => ({ form: inputs[name].form, factor: sensitivities[index] ?? 0 })));
  const side = sideOf(arithmetic, inputs, names);
  const { alternatives, notes } = otherBranches(arithmetic, inputs, names, plain, value);

  const sided = side === undefined ? {} : { side };
  const step: StepNode = {
    id: origin.id,
    kind: arithmetic.kind,
    name: origin.name,
    symbol: origin.symbol ?? null,
    value,
    unit: arithmetic.unit,
    u: side === undefined ? uncertaintyOf(form) : null,
    ...sided,
    ...(origin.show === undefined ? {} : { show: origin.show }),
    form,
    formula: arithmetic.formula,
    uses: [
      ...names.map((name, index) => ({
        node: inputs[name].step,
        symbol: arithmetic.symbols[name],
        sensitivity: sensitivities[index] ?? null,
      })),
      ...Object.entries(choices).map(([symbol, choice]) => ({ node: choice.step, symbol, sensitivity: null })),
    ],
    source: origin.source ?? null,
    notes: [...(origin.notes ?? []), ...notes],
  };
  return { value, unit: arithmetic.unit, form, ...sided, alternatives, step };
}

function slope<Name extends string>(
  compute: (plain: Readonly<Record<Name, number>>) => number,
  plain: Readonly<Record<Name, number>>,
  name: Name,
  input: Derived,
): number {
  const u = uncertaintyOf(input.form);
  const x = plain[name];
  const h = u !== null && u > 0 ? u * STEP_SHARE : Math.max(Math.abs(x), 1) * BLIND_STEP;
  const moved: Record<Name, number> = { ...plain };
  moved[name] = x + h;
  const up = compute(moved);
  moved[name] = x - h;
  const down = compute(moved);
  if (Number.isFinite(up) && Number.isFinite(down)) return (up - down) / (2 * h);
  const here = compute(plain);
  return Number.isFinite(up) ? (up - here) / h : Number.isFinite(down) ? (here - down) / h : 0;
}

function sideOf<Name extends string>(
  arithmetic: Arithmetic<Name>,
  inputs: Readonly<Record<Name, Derived>>,
  names: readonly Name[],
): Derived['side'] {
  let side: Derived['side'];
  for (const name of names) {
    const own = inputs[name].side;
    if (own === undefined) continue;
    const moves = arithmetic.moves?.[name];
    if (own === 'anywhere' || moves === undefined) return 'anywhere';
    const here = (own === 'above') === (moves === 'up') ? 'above' : 'below';
    if (side !== undefined && side !== here) return 'anywhere';
    side = here;
  }
  return side;
}

/** Tries every straddling leaf two standard uncertainties either way, and every alternative that an input already carries. */
function otherBranches<Name extends string>(
  arithmetic: Arithmetic<Name>,
  inputs: Readonly<Record<Name, Derived>>,
  names: readonly Name[],
  plain: Readonly<Record<Name, number>>,
  value: number,
): { alternatives: number[]; notes: Note[] } {
  const found: number[] = [];
  const notes: Note[] = [];
  for (const name of names) for (const other of inputs[name].alternatives) found.push(arithmetic.compute({ ...plain, [name]: other }));
  const { branch } = arithmetic;
  if (branch !== undefined) {
    const here = branch(plain);
    for (const { shift, leafId } of shifts(inputs, names)) {
      const moved = {} as Record<Name, number>;
      for (const name of names) moved[name] = plain[name] + shift(inputs[name].form);
      const there = branch(moved);
      if (there === here) continue;
      found.push(arithmetic.compute(moved));
      if (!notes.some((note) => note.args['branch'] === there)) notes.push({ key: 'otherBranch', args: { branch: there, leaf: leafId } });
    }
  }
  const finite = found.filter((other) => Number.isFinite(other) && other !== value);
  if (finite.length === 0) return { alternatives: [], notes };
  const least = Math.min(...finite);
  const greatest = Math.max(...finite);
  return { alternatives: least === greatest ? [least] : [least, greatest], notes };
}

function shifts<Name extends string>(
  inputs: Readonly<Record<Name, Derived>>,
  names: readonly Name[],
): { leafId: string; shift: (form: Form) => number }[] {
  const leaves = new Map<string, number>();
  for (const name of names)
    for (const { leaf } of inputs[name].form.values()) if (leaf.u !== null && leaf.u > 0) leaves.set(leaf.id, leaf.u);
  const one = [...leaves].flatMap(([leafId, u]) =>
    [STRADDLE, -STRADDLE].map((k) => ({ leafId, shift: (form: Form) => (form.get(leafId)?.c ?? 0) * k * u })),
  );
  // several leaves together may reach a row that none reaches alone
  const together = names.flatMap((name) => {
    const u = inputs[name].form.size > 1 ? uncertaintyOf(inputs[name].form) : null;
    return u === null || u === 0
      ? []
      : [STRADDLE, -STRADDLE].map((k) => ({ leafId: 'together', shift: (form: Form) => (form === inputs[name].form ? k * u : 0) }));
  });
  return [...one, ...together];
}
