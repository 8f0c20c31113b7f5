import { buildReading } from './build-reading.ts';
import { numberAtLetter } from './number-at-letter.ts';
import type { Scheme } from './reading.ts';
import { RESISTOR_TOLERANCE_CLASS, readToleranceLetter } from './tolerance-letter.ts';

const FORM = new RegExp(`^(\\d*)([Lm])(\\d*)([${RESISTOR_TOLERANCE_CLASS}])?$`);
const MILLI_EXPONENT = -3; // SI brochure, prefix m

/** A current-sense resistor with L or m at the decimal point, in milliohm: 5L0 and 5m0 are 5 mΩ. Source: memory. */
export const milliohmLetter: Scheme = {
  slug: 'milliohm-letter',
  part: 'resistor',
  read(mark) {
    const match = FORM.exec(mark);
    if (match === null) return [];
    const [, before = '', letter = '', after = '', toleranceLetter] = match;
    const value = numberAtLetter(before, after, MILLI_EXPONENT);
    if (value === null || value === 0) return [];
    const { tolerance, grades } = readToleranceLetter(toleranceLetter, 'resistor', value);
    return [
      buildReading('resistor', value, 'milliohm-letter', { tolerance, grades, notes: letter === 'm' ? ['letter-case-matters'] : [] }),
    ];
  },
};
