import type { Step } from '../../core/result/assessment.ts';
import { amountText } from '../words/amount-text.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { LEAVES } from '../words/leaf-words.ts';

/** One contribution to the uncertainty of a step, ready to be set. */
export interface BudgetLine {
  readonly words: string;
  /** Standard uncertainty in the step's own unit, or that it is not known. */
  readonly amount: string;
  /** Of the variance, 0 to 1; null when not known. */
  readonly share: number | null;
}

export const MOST_BUDGET_LINES = 8; // the rest is summed up: nobody reads a line of a hundredth of a percent
export const NOT_KNOWN = 'not known';
const PERCENT = 100;
const DIGITS = 2; // of an uncertainty; JCGM 100:2008, 7.2.6

export function toBudget(step: Step): { lines: readonly BudgetLine[]; left: number } {
  const lines = step.budget.map(({ means, args, u, share }) => ({
    words: sentenceFor(LEAVES, means, args),
    amount: budgetAmount(step, u),
    share,
  }));
  return { lines: lines.slice(0, MOST_BUDGET_LINES), left: Math.max(0, lines.length - MOST_BUDGET_LINES) };
}

/** "78 %", "under 1 %", "not known". */
export function shareText(share: number | null): string {
  if (share === null) return NOT_KNOWN;
  const percent = share * PERCENT;
  return percent > 0 && percent < 1 ? 'under 1\u00a0%' : `${Math.round(percent)}\u00a0%`;
}

/** A standard uncertainty is a difference: a temperature's is in kelvin, without the offset of the scale. */
function budgetAmount(step: Step, u: number | null): string {
  if (u === null) return NOT_KNOWN;
  if (step.unit === null) return '';
  return amountText({ value: Number(u.toPrecision(DIGITS)), unit: step.unit === 'K' ? 'ΔK' : step.unit, u: null }, step.show);
}
