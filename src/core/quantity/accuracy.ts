import { parseNumber } from './parse-number.ts';
import { parseQuantity } from './parse-quantity.ts';
import { isRefusal, type Refusal, refuse } from './refusal.ts';
import type { Kind } from './unit.ts';

/** What a data sheet promises: the reading is within the sum of these, or within the greater of two of them. */
export interface Accuracy {
  /** Share of the reading, 0.005 for "0.5 %". */
  readonly ofReading: number;
  /** Steps of the last digit. */
  readonly digits: number;
  /** A fixed amount in SI. */
  readonly fixed: number;
  /** "whichever is greater": the largest term counts instead of the sum. */
  readonly greater: boolean;
}

const EXPECTED = 'an accuracy such as 0.5 % + 3 digits, or 2 % or 2 K, whichever is greater';
const PERCENT = /^([\d.,]+)\s*%\s*(?:of\s+)?(?:rdg|reading|rd|of reading)?\.?$/i;
const DIGITS = /^([\d.,]+)\s*(?:digits?|dgts?|counts?|d|lsd)\.?$/i;
const GREATER = /,?\s*\(?whichever is (?:the )?(?:greater|larger|higher)\)?/i;

/**
 * Reads an accuracy as meters state it: "0.5 % + 3 digits", "±(0.8 % rdg + 2 dgt)", "2 % or 2 K, whichever is greater", "0.03 mm".
 * A bare "0.5 % + 3" counts digits, as data sheets do.
 */
export function parseAccuracy(text: string, of: Kind): Accuracy | Refusal {
  const greater = GREATER.test(text);
  const body = text.replace(GREATER, '').replace(/[±()]/g, ' ').replace('+/-', ' ').trim();
  const terms = body.split(greater ? /\s+or\s+|\s*\+\s*/i : /\s*\+\s*/).map((term) => term.trim());
  // a sum inside an alternative is stated by no sheet we know and could be read two ways
  if (greater && body.includes('+')) return refuse('not-an-accuracy', text, EXPECTED);
  if (body === '' || (!greater && /\sor\s/i.test(body))) return refuse('not-an-accuracy', text, EXPECTED);
  const sum = { ofReading: 0, digits: 0, fixed: 0 };
  for (const [index, term] of terms.entries()) {
    const percent = PERCENT.exec(term);
    const digits = DIGITS.exec(term) ?? (index > 0 ? /^(\d+)$/.exec(term) : null);
    if (percent !== null) {
      const number = parseNumber(percent[1] ?? '');
      if (isRefusal(number)) return { ...number, got: text };
      sum.ofReading += number.value / 100;
    } else if (digits !== null) {
      const number = parseNumber(digits[1] ?? '');
      if (isRefusal(number)) return { ...number, got: text };
      sum.digits += number.value;
    } else {
      const fixed = parseQuantity(term, of === 'temperature' ? 'temperatureDifference' : of);
      if (isRefusal(fixed)) {
        const celsius = of === 'temperature' ? /^([\d.,]+)\s*(?:°C|C|℃)$/.exec(term) : null; // sheets write "±2 °C" for a difference
        const number = celsius === null ? null : parseNumber(celsius[1] ?? '');
        if (number === null || isRefusal(number)) return refuse('not-an-accuracy', text, EXPECTED);
        sum.fixed += number.value;
      } else sum.fixed += fixed.value;
    }
  }
  return { ...sum, greater };
}

/** The bound itself, in SI, for one reading whose last digit is worth `lastDigit`. */
export function boundOf(accuracy: Accuracy, reading: number, lastDigit: number): number {
  const terms = [accuracy.ofReading * Math.abs(reading), accuracy.digits * lastDigit, accuracy.fixed];
  return accuracy.greater ? Math.max(...terms) : terms.reduce((sum, term) => sum + term, 0);
}
