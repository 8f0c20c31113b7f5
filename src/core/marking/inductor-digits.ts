import { shiftDecimal } from '../quantity/shift-decimal.ts';
import { buildReading } from './build-reading.ts';
import type { Scheme } from './reading.ts';
import { RESISTOR_TOLERANCE_CLASS, readToleranceLetter } from './tolerance-letter.ts';

const FORM = new RegExp(`^([1-9]\\d)(\\d)([${RESISTOR_TOLERANCE_CLASS}])?$`);
const MICRO_EXPONENT = -6; // SI brochure, prefix µ

/** An inductor's two digits and number of zeros, in microhenry, kept in henry: 101 is 100 µH, 470 is 47 µH. 10 µH and up. Source: memory. */
export const inductorDigits: Scheme = {
  slug: 'inductor-digits',
  part: 'inductor',
  read(mark) {
    const match = FORM.exec(mark);
    if (match === null) return [];
    const value = shiftDecimal(Number(match[1]), Number(match[2]) + MICRO_EXPONENT);
    const { tolerance } = readToleranceLetter(match[3], 'inductor', value);
    return [buildReading('inductor', value, 'inductor-digits', { tolerance })];
  },
};
