import { shiftDecimal } from '../quantity/shift-decimal.ts';
import { buildReading } from './build-reading.ts';
import type { Scheme } from './reading.ts';
import { CAPACITOR_TOLERANCE_CLASS, readToleranceLetter } from './tolerance-letter.ts';

const FORM = new RegExp(`^([1-9]\\d)(\\d)([${CAPACITOR_TOLERANCE_CLASS}])?$`);
const PICO_EXPONENT = -12; // SI brochure, prefix p

/** Third digits that divide instead of adding zeros. 9 is × 0.1, 8 is × 0.01 (a hobby page's code table). */
const SHRINKING: Readonly<Record<string, number>> = { '8': -2, '9': -1 };

/**
 * A capacitor's two digits and number of zeros, in picofarad, kept in farad: 104 is 100 nF, 472K is 4.7 nF ± 10 %, 479 is 4.7 pF. 0.1 pF to 990 µF.
 * Source: IEC 60062, and capacitor makers' code tables for the tolerance.
 */
export const capacitorDigits: Scheme = {
  slug: 'capacitor-digits',
  part: 'capacitor',
  read(mark) {
    const match = FORM.exec(mark);
    if (match === null) return [];
    const zeros = match[2]!;
    const shrinks = SHRINKING[zeros];
    const value = shiftDecimal(Number(match[1]), (shrinks ?? Number(zeros)) + PICO_EXPONENT);
    const { tolerance, grades, notes } = readToleranceLetter(match[3], 'capacitor', value);
    return [
      buildReading('capacitor', value, 'capacitor-digits', {
        tolerance,
        grades,
        notes: shrinks === undefined ? notes : [...notes, 'eight-and-nine-shrink'],
      }),
    ];
  },
};
