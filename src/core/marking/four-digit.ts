import { shiftDecimal } from '../quantity/shift-decimal.ts';
import { buildReading } from './build-reading.ts';
import type { Scheme } from './reading.ts';
import { RESISTOR_TOLERANCE_CLASS, readToleranceLetter } from './tolerance-letter.ts';

const FORM = new RegExp(`^([1-9]\\d\\d)(\\d)([${RESISTOR_TOLERANCE_CLASS}])?$`);

/**
 * A resistor's three digits and number of zeros, in ohm: ABC × 10^D, 100 Ω to 999 GΩ; a tolerance letter may follow.
 * Source: IEC 60062, read in a maker's data sheet.
 */
export const fourDigit: Scheme = {
  slug: 'four-digit',
  part: 'resistor',
  read(mark) {
    const match = FORM.exec(mark);
    if (match === null) return [];
    const value = shiftDecimal(Number(match[1]), Number(match[2]));
    const { tolerance, grades } = readToleranceLetter(match[3], 'resistor', value);
    return [buildReading('resistor', value, 'four-digit', { tolerance, grades, notes: ['underline-may-mean-current-sense'] })];
  },
};
