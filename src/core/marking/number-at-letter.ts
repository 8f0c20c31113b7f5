import { shiftDecimal } from '../quantity/shift-decimal.ts';

const MOST_DIGITS = 5; // IEC 60062 codes have up to four characters beside the letter; makers print five (R0005)

/**
 * The number whose decimal point is a letter, times 10^exponent: ("4", "7") is 4.7, ("", "47") is 0.47, ("10", "") is 10.
 * Null when there is no digit, too many, or a zero that no code prints ("01", "").
 */
export function numberAtLetter(before: string, after: string, exponent: number): number | null {
  const digits = before.length + after.length;
  if (digits === 0 || digits > MOST_DIGITS) return null;
  if (before.length > 1 && before.startsWith('0')) return null;
  return shiftDecimal(Number(`${before === '' ? '0' : before}.${after === '' ? '0' : after}`), exponent);
}
