import type { MissingReason } from './instrument-file.ts';

/** The marks instruments write in place of a number, as words of the trade. */
const OVERLOAD =
  /^[+-]?(ol|o\.l\.?|o\.?ld|ovl|ovld|ov|ovrld|overld|overload|ovf|ovfl|ovrflw|ovflw|overflow|over|over[ -]?range|ovrng|ovrg|inf|infinity|∞|1\.#inf0*|>{2,}|<{2,}|9[.,]90*e\+?37|under|under[ -]?range|underflow)$/i;
const NOT_A_NUMBER = /^[+-]?(nan|nanq|qnan|snan|nan\((ind|snan)\)|1\.#(qnan|snan|ind)0*|9[.,]910*e\+?37|#num!|#value!|#div\/0!|#n\/a)$/i;
const NO_READING =
  /^([-–—_.*?#]+|n\/?a|n\.a\.|null|nil|none|void|no ?data|no ?reading|invalid|missing|error|err|open|opn|burn-?out|disconnected)$/i;
const NEEDS_A_SIGN_OF_ABSENCE = /[-–—_*?#]/; // a lone point is no mark

/** Why the text is a mark for "no value here", or null when it is none. */
export function findMissingMark(text: string): MissingReason | null {
  if (text === '') return 'blank';
  if (text.length > LONGEST_MARK) return null;
  if (OVERLOAD.test(text)) return 'overload';
  if (NOT_A_NUMBER.test(text)) return 'not-a-number-mark';
  if (NO_READING.test(text) && (/[a-z]/i.test(text) || NEEDS_A_SIGN_OF_ABSENCE.test(text))) return 'no-reading-mark';
  return null;
}

const LONGEST_MARK = 16; // characters of the longest mark above, with room

/** The open command standard for instruments prescribes 9.9E37 for infinity and 9.91E37 for "not a number". */
const STANDARD_INFINITY = 9.9e37;
const STANDARD_NOT_A_NUMBER = 9.91e37;
export const BEYOND_ANY_READING = 1e30; // no bench quantity in any unit; larger numbers are marks

/** Why a number this large is no reading, or null when it may be one. */
export function findMissingNumber(value: number): MissingReason | null {
  const size = Math.abs(value);
  if (size < BEYOND_ANY_READING) return null;
  if (size === STANDARD_NOT_A_NUMBER) return 'not-a-number-mark';
  return size >= STANDARD_INFINITY ? 'overload' : 'sensor-code';
}
