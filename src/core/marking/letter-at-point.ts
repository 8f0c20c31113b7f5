import type { Grade } from '../source/grade.ts';
import { buildReading } from './build-reading.ts';
import { numberAtLetter } from './number-at-letter.ts';
import type { Scheme } from './reading.ts';
import { RESISTOR_TOLERANCE_CLASS, readToleranceLetter } from './tolerance-letter.ts';

const FORM = new RegExp(`^(\\d*)([RrKkMGT])(\\d*)([${RESISTOR_TOLERANCE_CLASS}])?$`);

/** Letter to power of ten in ohm. R, K and M read in an encyclopaedia; G and T from memory. A small m is no M: it is a milliohm. */
const OHM_LETTERS: Readonly<Record<string, { readonly exponent: number; readonly grade: Grade }>> = {
  R: { exponent: 0, grade: 'secondary' },
  K: { exponent: 3, grade: 'secondary' },
  M: { exponent: 6, grade: 'secondary' },
  G: { exponent: 9, grade: 'memory' },
  T: { exponent: 12, grade: 'memory' },
};

/**
 * A resistor's value with a letter at the decimal point, in ohm: 4K7, 47K3, 10R, R47 (0.47 Ω), 4M7J. 0.01 mΩ and up.
 * Source: IEC 60062, letter and digit code.
 */
export const letterAtPoint: Scheme = {
  slug: 'letter-at-point',
  part: 'resistor',
  read(mark) {
    const match = FORM.exec(mark);
    if (match === null) return [];
    const [, before = '', letter = '', after = '', toleranceLetter] = match;
    const { exponent, grade } = OHM_LETTERS[letter.toUpperCase()]!;
    const value = numberAtLetter(before, after, exponent);
    if (value === null) return [];
    const { tolerance, grades } = readToleranceLetter(toleranceLetter, 'resistor', value);
    return [
      buildReading('resistor', value, 'letter-at-point', {
        tolerance,
        grades: [grade, ...grades],
        notes: letter === 'M' ? ['letter-case-matters'] : [],
      }),
    ];
  },
};
