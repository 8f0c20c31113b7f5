import { shiftDecimal } from '../quantity/shift-decimal.ts';
import { buildReading } from './build-reading.ts';
import { E_SERIES } from './e-series.ts';
import type { Reading, Scheme } from './reading.ts';
import { CAPACITOR_TOLERANCE_CLASS, readToleranceLetter } from './tolerance-letter.ts';

const SMALL = new RegExp(`^([1-9]\\d?)([${CAPACITOR_TOLERANCE_CLASS}])?$`);
const WHOLE = /^[1-9]\d{0,3}$/;
const PICO_EXPONENT = -12; // SI brochure, prefix p
const MICRO_EXPONENT = -6; // SI brochure, prefix µ

/**
 * A number on a capacitor without a unit: one or two digits are picofarad on a ceramic body (47, 22J); up to four are microfarad on the can of an
 * electrolytic (100, 470), which is read only for values of E12, the ones such cans are made in. Values in farad. Common practice, no source.
 */
export const plainNumber: Scheme = {
  slug: 'plain-number',
  part: 'capacitor',
  read(mark) {
    const found: Reading[] = [];
    const small = SMALL.exec(mark);
    if (small !== null) {
      const value = shiftDecimal(Number(small[1]), PICO_EXPONENT);
      const { tolerance, grades, notes } = readToleranceLetter(small[2], 'capacitor', value);
      found.push(buildReading('capacitor', value, 'plain-number', { tolerance, grades, notes: [...notes, 'taken-as-picofarad'] }));
    }
    if (WHOLE.test(mark) && E_SERIES.E12.includes(Number(Number(mark).toExponential().split('e')[0])))
      found.push(buildReading('capacitor', shiftDecimal(Number(mark), MICRO_EXPONENT), 'plain-number', { notes: ['taken-as-microfarad'] }));
    return found;
  },
};
