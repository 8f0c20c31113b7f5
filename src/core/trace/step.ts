import type { Source } from '../source/source.ts';
import type { Form } from './leaf.ts';

export type StepKind = 'reading' | 'typed' | 'constant' | 'lookUp' | 'formula' | 'choice' | 'reduce';

/** A remark that travels with a step: a key for the words and what to put into them. */
export interface Note {
  readonly key: string;
  readonly args: Readonly<Record<string, string | number>>;
}

/** One link of a derivation while it is being built. Flattened into the Assessment's steps at the end. */
export interface StepNode {
  /** Readable path, unique and stable: "load/out-1/5v/held-current". */
  readonly id: string;
  readonly kind: StepKind;
  /** Id of the formula or table, or a key for the words. */
  readonly name: string;
  readonly symbol: string | null;
  readonly value: number | null;
  readonly word?: string;
  readonly unit: string | null;
  readonly u: number | null;
  readonly side?: 'below' | 'above' | 'anywhere';
  readonly show?: 'percent' | 'hours' | 'minutes' | 'milliamperes' | 'millimetres';
  /** Doubt as a linear form, for the budget. */
  readonly form: Form;
  /** Formula id when the arithmetic can be printed. */
  readonly formula: string | null;
  readonly uses: readonly { readonly node: StepNode; readonly symbol: string; readonly sensitivity: number | null }[];
  readonly source: Source | null;
  /** Field of the case it was read from. */
  readonly field?: string;
  readonly notes: readonly Note[];
}
