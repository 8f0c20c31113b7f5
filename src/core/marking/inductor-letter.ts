import { buildReading } from './build-reading.ts';
import { numberAtLetter } from './number-at-letter.ts';
import type { Scheme } from './reading.ts';
import { RESISTOR_TOLERANCE_CLASS, readToleranceLetter } from './tolerance-letter.ts';

const FORM = new RegExp(`^(\\d*)([RN])(\\d*)([${RESISTOR_TOLERANCE_CLASS}])?$`);

/** R stands at the point of a microhenry value, N of a nanohenry value. Memory. */
const HENRY_EXPONENT: Readonly<Record<string, number>> = { R: -6, N: -9 };

/** An inductor's value with a letter at the decimal point, in henry: 4R7 is 4.7 µH, R47 is 0.47 µH, 47N is 47 nH. Source: memory. */
export const inductorLetter: Scheme = {
  slug: 'inductor-letter',
  part: 'inductor',
  read(mark) {
    const match = FORM.exec(mark);
    if (match === null) return [];
    const [, before = '', letter = '', after = '', toleranceLetter] = match;
    if (letter === 'R' && after === '') return []; // whole microhenry are marked with digits
    const value = numberAtLetter(before, after, HENRY_EXPONENT[letter]!);
    if (value === null || value === 0) return [];
    const { tolerance } = readToleranceLetter(toleranceLetter, 'inductor', value);
    return [buildReading('inductor', value, 'inductor-letter', { tolerance, notes: letter === 'N' ? ['letter-case-matters'] : [] })];
  },
};
