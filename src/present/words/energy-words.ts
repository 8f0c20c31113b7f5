import { COVERAGE_OF_PLUS_MINUS } from '../../core/quantity/parse-quantity.ts';
import type { Assessment } from '../../core/result/assessment.ts';
import { amountText } from './amount-text.ts';

/** Before the board was read: 100 µF, more than any unit of this size carries, at the crest of 264 V. A bound of ours, common practice. */
const GENERIC = 'Board not read: assume up to 7 J at 373 V.';
const DIGITS = 3;

/** How much energy to reckon with, as a bound: generic until the board is read, then this unit's. Never a waiting time. */
export function energyText({ stored }: Pick<Assessment, 'stored'>): string {
  if (stored === null) return GENERIC;
  const { energy, crest, parts } = stored;
  const upper = Number((energy.value + COVERAGE_OF_PLUS_MINUS * (energy.u ?? 0)).toPrecision(DIGITS));
  const at = amountText({ value: Number(crest.value.toPrecision(DIGITS)), unit: crest.unit, u: null });
  return `${parts.join(' and ')} can hold up to ${amountText({ value: upper, unit: energy.unit, u: null })} at ${at}, for hours.`;
}
