import type { DecimalMark } from './instrument-file.ts';

/**
 * The value of a plain number, correctly rounded as `Number()` rounds; NaN when the text is no plain number (also for "NaN": marks
 * are not numbers here). Grammar: sign, digits with at most one decimal mark, exponent. No grouping of thousands, no blanks.
 */
export function parseNumber(text: string, mark: DecimalMark): number {
  const end = text.length;
  const markCode = mark === 'point' ? POINT : COMMA;
  let i = 0;
  let negative = false;
  const first = text.charCodeAt(0);
  if (first === MINUS || first === PLUS || first === TRUE_MINUS) {
    negative = first !== PLUS;
    i = 1;
  }
  let mantissa = 0;
  let digits = 0;
  let scale = 0;
  let marked = false;
  for (; i < end; i++) {
    const code = text.charCodeAt(i);
    const digit = code - ZERO;
    if (digit >= 0 && digit <= NINE) {
      digits++;
      mantissa = mantissa * TEN + digit;
      if (marked) scale--;
    } else if (code === markCode && !marked) marked = true;
    else break;
  }
  if (digits === 0) return Number.NaN;
  if (i < end) {
    const code = text.charCodeAt(i);
    if (code !== UPPER_E && code !== LOWER_E) return Number.NaN;
    i++;
    const sign = text.charCodeAt(i);
    if (sign === MINUS || sign === PLUS) i++;
    if (i >= end) return Number.NaN;
    let exponent = 0;
    for (; i < end; i++) {
      const digit = text.charCodeAt(i) - ZERO;
      if (!(digit >= 0 && digit <= NINE)) return Number.NaN;
      if (exponent < EXPONENT_CAP) exponent = exponent * TEN + digit;
    }
    scale += sign === MINUS ? -exponent : exponent;
  }
  if (mantissa <= EXACT_INTEGER && scale >= -EXACT_POWER && scale <= EXACT_POWER) {
    const value = scale < 0 ? mantissa / POWERS[-scale]! : mantissa * POWERS[scale]!;
    return negative ? -value : value;
  }
  const plain = first === TRUE_MINUS ? `-${text.slice(1)}` : text;
  return Number(mark === 'comma' ? plain.replace(',', '.') : plain);
}

/**
 * A double holds every integer up to 2^53, and every power of ten up to 10^22, exactly: one operation on the two then rounds
 * correctly. Digits only make the mantissa grow, so one that ends below the limit never lost a digit on the way.
 */
export const EXACT_INTEGER = Number.MAX_SAFE_INTEGER;
export const EXACT_POWER = 22;
export const POWERS: readonly number[] = Array.from({ length: EXACT_POWER + 1 }, (_, k) => Number(`1e${k}`));

const EXPONENT_CAP = 100_000; // beyond any double; keeps the counter from growing
const TEN = 10;
const NINE = 9;
const ZERO = 0x30;
const PLUS = 0x2b;
const MINUS = 0x2d;
const TRUE_MINUS = 0x2212; // the typographic minus sign
const POINT = 0x2e;
const COMMA = 0x2c;
const UPPER_E = 0x45;
const LOWER_E = 0x65;
