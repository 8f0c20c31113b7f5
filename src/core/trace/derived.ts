import { kindOf, type SiUnit } from '../quantity/unit.ts';
import type { Source } from '../source/source.ts';
import { type Form, type Leaf, NO_DOUBT, uncertaintyOf } from './leaf.ts';
import type { Note, StepNode } from './step.ts';

/** A number that can say where it came from: value in SI, doubt as a linear form over leaves, and the step that made it. */
export interface Derived {
  readonly value: number;
  readonly unit: SiUnit;
  readonly form: Form;
  /** A bound only: the true value lies below or above `value`; "anywhere" when one-sided inputs pulled both ways. */
  readonly side?: 'below' | 'above' | 'anywhere';
  /** What the value would be on the other branch of an unsmooth step that the uncertainty straddles: least and greatest. */
  readonly alternatives: readonly number[];
  readonly step: StepNode;
}

/** A choice in words (a material group, an edition) that later steps use. */
export interface Chosen {
  readonly word: string;
  readonly step: StepNode;
}

export interface Origin {
  readonly id: string;
  readonly name: string;
  readonly symbol?: string;
  readonly source?: Source | null;
  readonly field?: string;
  readonly notes?: readonly Note[];
  readonly show?: StepNode['show'];
}

/** Standard uncertainty, null when unknown. */
export function uncertainty(derived: Derived): number | null {
  return derived.side === undefined ? uncertaintyOf(derived.form) : null;
}

/** A leaf value of the derivation: a reading, a typed claim, a constant. */
export function given(
  kind: 'reading' | 'typed' | 'constant',
  value: number,
  unit: SiUnit,
  origin: Origin,
  doubt: { form?: Form; side?: 'below' | 'above' } = {},
): Derived {
  kindOf(unit); // a unit we do not keep is a defect here, not later
  if (!Number.isFinite(value)) throw new Error(`${origin.id}: ${value} is not a number`);
  const form = doubt.form ?? NO_DOUBT;
  const side = doubt.side === undefined ? {} : { side: doubt.side };
  const step: StepNode = {
    id: origin.id,
    kind,
    name: origin.name,
    symbol: origin.symbol ?? null,
    value,
    unit,
    u: doubt.side === undefined ? uncertaintyOf(form) : null,
    ...side,
    ...(origin.show === undefined ? {} : { show: origin.show }),
    form,
    formula: null,
    uses: [],
    source: origin.source ?? null,
    ...(origin.field === undefined ? {} : { field: origin.field }),
    notes: origin.notes ?? [],
  };
  return { value, unit, form, ...side, alternatives: [], step };
}

/** A choice as a step of its own. */
export function chosen(word: string, origin: Origin, uses: readonly (Derived | Chosen)[] = []): Chosen {
  return {
    word,
    step: {
      id: origin.id,
      kind: 'choice',
      name: origin.name,
      symbol: origin.symbol ?? null,
      value: null,
      word,
      unit: null,
      u: null,
      form: NO_DOUBT,
      formula: null,
      uses: uses.map(({ step }) => ({ node: step, symbol: step.symbol ?? '', sensitivity: null })),
      source: origin.source ?? null,
      ...(origin.field === undefined ? {} : { field: origin.field }),
      notes: origin.notes ?? [],
    },
  };
}

/** One leaf with a factor, as a form. */
export function doubtOf(leaf: Leaf, c = 1): Form {
  return new Map([[leaf.id, { leaf, c }]]);
}

/** The same value under another symbol, for a formula that calls it something else. Keeps doubt and step. */
export function withNotes(derived: Derived, notes: readonly Note[]): Derived {
  return { ...derived, step: { ...derived.step, notes: [...derived.step.notes, ...notes] } };
}
