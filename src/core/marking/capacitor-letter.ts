import type { Grade } from '../source/grade.ts';
import { buildReading } from './build-reading.ts';
import { numberAtLetter } from './number-at-letter.ts';
import type { NoteKey, Scheme } from './reading.ts';
import { CAPACITOR_TOLERANCE_CLASS, readToleranceLetter } from './tolerance-letter.ts';

const FORM = new RegExp(`^(\\d*)([pPnNuUµmFR])(\\d*)([${CAPACITOR_TOLERANCE_CLASS}])?$`);

/** Letter to power of ten in farad: p, n and µ read in an encyclopaedia, m and F from memory; R stands for the point of a picofarad value (a hobby page). */
const FARAD_LETTERS: Readonly<Record<string, { readonly exponent: number; readonly grade: Grade }>> = {
  p: { exponent: -12, grade: 'secondary' },
  n: { exponent: -9, grade: 'secondary' },
  u: { exponent: -6, grade: 'secondary' },
  µ: { exponent: -6, grade: 'secondary' },
  m: { exponent: -3, grade: 'memory' },
  F: { exponent: 0, grade: 'memory' },
  R: { exponent: -12, grade: 'secondary' },
};
const READ_IN_EITHER_CASE = 'PNU';

/**
 * A capacitor's value with a letter at the decimal point, in farad: 2n2, p47, 4µ7, 3R9 (3.9 pF). The code has small letters; prints have capitals too.
 * Source: IEC 60062, letter and digit code.
 */
export const capacitorLetter: Scheme = {
  slug: 'capacitor-letter',
  part: 'capacitor',
  read(mark) {
    const match = FORM.exec(mark);
    if (match === null) return [];
    const [, before = '', letter = '', after = '', toleranceLetter] = match;
    if (letter === 'R' && (before.length !== 1 || after === '')) return []; // 3R9; without both sides it is an ohm value
    if (toleranceLetter === 'F' && after === '' && letter !== 'R') return []; // 100nF is written out: the F is the unit
    const capital = READ_IN_EITHER_CASE.includes(letter);
    const { exponent, grade } = FARAD_LETTERS[capital ? letter.toLowerCase() : letter]!;
    const value = numberAtLetter(before, after, exponent);
    if (value === null || value === 0) return [];
    const read = readToleranceLetter(toleranceLetter, 'capacitor', value);
    const notes: NoteKey[] = [...read.notes];
    if (capital || letter === 'm') notes.push('letter-case-matters');
    return [buildReading('capacitor', value, 'capacitor-letter', { tolerance: read.tolerance, grades: [grade, ...read.grades], notes })];
  },
};
