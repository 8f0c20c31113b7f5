import type { SiUnit } from '../quantity/unit.ts';
import type { Source } from '../source/source.ts';
import type { StepNode } from '../trace/step.ts';

export interface FormulaInput {
  /** As it stands in `tex`. */
  readonly symbol: string;
  readonly unit: SiUnit;
  readonly means: string;
  /** Which way the result moves when this input grows, over the whole range; left out when it is not monotone. */
  readonly moves?: 'up' | 'down';
  /** Range in which the source (or the physics) lets the formula be used; outside, the step carries a note. */
  readonly from?: number;
  readonly to?: number;
}

/** Declared data plus arithmetic on plain SI numbers. `derive` does all bookkeeping. */
export interface Formula<Name extends string = string> {
  /** Equals the path of its file: "insulation/bridging-current". */
  readonly id: string;
  readonly tex: string;
  /** The same on one plain line for a terminal, with the input symbols as separate words so that numbers can take their place: "I = 2π · f · C · V". */
  readonly text: string;
  readonly source: Source;
  readonly inputs: Readonly<Record<Name, FormulaInput>>;
  readonly output: { readonly symbol: string; readonly unit: SiUnit; readonly means: string; readonly show?: StepNode['show'] };
  /** In words; "none given" where the source states none. */
  readonly validity: string;
  readonly compute: (plain: Readonly<Record<Name, number>>) => number;
  readonly sensitivity?: (plain: Readonly<Record<Name, number>>) => Partial<Record<Name, number>>;
  readonly branch?: (plain: Readonly<Record<Name, number>>) => string;
}

export function defineFormula<const Name extends string>(formula: Formula<Name>): Formula<Name> {
  return formula;
}
