import type { Consequence, Reason, Rung } from '../result/assessment.ts';
import type { Note, StepNode } from '../trace/step.ts';
import type { Facts } from '../working/facts.ts';
import type { Judgement } from './decide.ts';

/** One thing a check is asked about: a pair of conductors, a port, a place. */
export interface Subject {
  readonly id: string;
  /** In the case's own names. */
  readonly about: string;
}

/** What a check answers for one subject. */
export interface Answer {
  readonly judgement: Judgement;
  /** Of this finding; the check's own default when left out. */
  readonly consequence?: Consequence;
  readonly rung?: Rung;
  readonly state?: 'tested' | 'labelLoad' | 'worstSustained' | 'shorted';
  readonly show?: 'percent' | 'hours' | 'minutes' | 'milliamperes' | 'millimetres';
  /** Steps worth keeping beside the deciding one: a cross-check, a comparison. */
  readonly beside?: readonly StepNode[];
  readonly notes?: readonly Note[];
  /** Id of another finding that asks the same of the same thing: where both fail it is one defect, and the verdict names the other. */
  readonly sameAs?: string;
  /** A second finding on the same subject: a graver level that fails too, but on a limit that cannot carry the headline alone. */
  readonly beyond?: { readonly id: string; readonly answer: Answer };
}

/** The limit is data (a table), the question is a function. */
export interface Check<S extends Subject> {
  /** Equals the path of its file and an id of the bench set. */
  readonly id: string;
  /** Consequence of a plain failure. */
  readonly consequence: Consequence;
  /** Evidence asked for: keys for the words of "what to measure next". */
  readonly needs: readonly string[];
  /** What is asked about, in a stable order; or why there is nothing. */
  readonly subjects: (facts: Facts) => readonly S[] | Reason;
  readonly judge: (facts: Facts, subject: S) => Answer;
}

// biome-ignore lint/suspicious/noExplicitAny: a registry of checks over different subjects; each check is type-checked where it is defined
export type AnyCheck = Check<any>;

export function defineCheck<S extends Subject>(check: Check<S>): Check<S> {
  return check;
}
