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

type Residual = NonNullable<Assessment['residuals']>[number];

const MEANS: Readonly<Record<Residual['first']['touchable'], string>> = {
  below: 'not above',
  above: 'above',
  unclear: 'too near to tell whether above',
};

/** What the examiner met on the capacitors. "C1: 143 V (0.22 J) 20 s after unplugging, above the 60 V that may be touched; 12 V (1.6 mJ) 80 s after." Never says that a capacitor is empty. */
export function residualText({ across, limit, first, later }: Residual): string {
  const most =
    limit.at === undefined ? '' : ` the ${amountText({ value: limit.at.value, unit: limit.at.unit, u: null })} that may be touched`;
  const head = `${across === null ? '' : `${across}: `}${readingText(first)}, ${MEANS[first.touchable]}${most}`;
  if (later === null) return `${head}; not read a second time.`;
  const back = later.volts.value > first.volts.value ? ' (charge came back)' : '';
  return `${head}; ${readingText(later)}${back}, ${MEANS[later.touchable]} it.`;
}

function readingText({ volts, after, energy }: Residual['first']): string {
  const joules = energy === null ? '' : ` (${amountText({ value: Number(energy.value.toPrecision(2)), unit: energy.unit, u: null })})`;
  const when =
    after === null ? 'after unplugging, when is not stated' : `${amountText({ value: after, unit: 's', u: null })} after unplugging`;
  return `${amountText(volts)}${joules} ${when}`;
}
