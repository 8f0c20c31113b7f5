import { shiftDecimal } from '../quantity/shift-decimal.ts';
import { buildReading } from './build-reading.ts';
import type { Scheme } from './reading.ts';
import { RESISTOR_TOLERANCE_CLASS, readToleranceLetter } from './tolerance-letter.ts';

const FORM = new RegExp(`^([1-9]\\d)(\\d)([${RESISTOR_TOLERANCE_CLASS}])?$`);

/**
 * A resistor's two digits and number of zeros, in ohm: AB × 10^C, 10 Ω to 99 GΩ; a tolerance letter may follow (networks).
 * Source: IEC 60062, read on a learning page and in a maker's data sheet.
 */
export const threeDigit: Scheme = {
  slug: 'three-digit',
  part: 'resistor',
  read(mark) {
    const match = FORM.exec(mark);
    if (match === null) return [];
    const value = shiftDecimal(Number(match[1]), Number(match[2]));
    const { tolerance, grades } = readToleranceLetter(match[3], 'resistor', value);
    return [buildReading('resistor', value, 'three-digit', { tolerance, grades, notes: ['underline-may-mean-current-sense'] })];
  },
};
