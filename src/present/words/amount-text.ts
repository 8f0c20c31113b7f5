import { formatQuantity, type Printed, type ShowAs } from '../../core/quantity/format-quantity.ts';
import type { Amount, Finding, Measured } from '../../core/result/assessment.ts';
import { foundText } from './found-words.ts';

export type Show = NonNullable<Finding['show']>;

const SHOW_AS: Readonly<Record<Exclude<Show, 'milliamperes'>, ShowAs>> = { percent: '%', hours: 'h', minutes: 'min', millimetres: 'mm' };
const MILLI = 1e-3;

/** Digits, half width and unit of an amount, the way the finding or the step asks for it. */
export function printAmount(amount: Amount, show?: Show): Printed {
  const { value, unit, u, side } = amount;
  if (side === 'anywhere') return { number: 'anywhere', plusMinus: null, unit: '' };
  if (show === 'milliamperes')
    return { ...formatQuantity({ value: value / MILLI, unit: '1', u: u === null ? null : u / MILLI, side }), unit: 'mA' };
  return formatQuantity({ value, unit, u, side }, show === undefined ? undefined : SHOW_AS[show]);
}

/** On one line: "3.10 ± 0.20 mm", "anywhere" when nothing is known but that it was looked at. */
export function amountText(amount: Amount, show?: Show): string {
  const { number, plusMinus, unit } = printAmount(amount, show);
  return `${number}${plusMinus === null ? '' : `\u00a0±\u00a0${plusMinus}`}${unit === '' ? '' : `\u00a0${unit}`}`;
}

export function measuredText(measured: Measured, show?: Show): string {
  return 'word' in measured ? foundText(measured.word) : amountText(measured, show);
}
