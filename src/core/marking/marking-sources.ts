import { type Grade, weakestGrade } from '../source/grade.ts';
import { cite, type Source } from '../source/source.ts';
import type { SchemeSlug } from './reading.ts';

const ENCYCLOPAEDIA = 'an encyclopaedia, article on the letter and digit code of IEC 60062';
const LEARNING_PAGE = 'a board maker’s learning page on reading resistors';
const CHIP_SHEET = 'a chip resistor maker’s data sheet of 2016, section on marking';
const CAPACITOR_TABLES = 'code tables of three capacitor makers, in one copy';
const CAPACITOR_PAGE = 'a hobby page with the capacitor code tables of 2014';
const DISPUTED_LETTERS = 'G and H: the data sheet prints 10^6 and 10^7, the learning page has no G and prints H as 10';

/** Where each scheme is taken from. A reading that needs a worse sourced detail carries the worse grade. */
export const MARKING_SOURCES: Readonly<Record<SchemeSlug, Source>> = {
  jumper: cite('bench', 'zero-ohm link marked with zeros', 'common-practice', { alsoBy: ['a question page on chip resistors'] }),
  'three-digit': cite('iec-60062', 'fixed length code of two digits and a number of zeros', 'secondary', {
    alsoBy: [LEARNING_PAGE, CHIP_SHEET],
  }),
  'four-digit': cite('iec-60062', 'fixed length code of three digits and a number of zeros', 'secondary', { alsoBy: [CHIP_SHEET] }),
  'letter-at-point': cite('iec-60062', 'letter and digit code for resistance values', 'secondary', { alsoBy: [ENCYCLOPAEDIA] }),
  'milliohm-letter': cite('bench', 'L or m at the decimal point of a milliohm value', 'memory'),
  'e96-code': cite(
    'iec-60062',
    'annex A, special three character coding of resistance values with three significant numerals',
    'secondary',
    {
      alsoBy: [LEARNING_PAGE, CHIP_SHEET],
      disagrees: [DISPUTED_LETTERS],
    },
  ),
  'letter-first': cite('bench', 'three-character code for values of E24, letter first', 'memory', { disagrees: [DISPUTED_LETTERS] }),
  'colour-bands': cite('iec-60062', 'colour code for fixed resistors', 'secondary', {
    alsoBy: ['a note on the labelling of resistors after IEC'],
  }),
  'capacitor-digits': cite('iec-60062', 'fixed length code of two digits and a number of zeros, in picofarad', 'secondary', {
    alsoBy: [CAPACITOR_PAGE],
  }),
  'capacitor-letter': cite('iec-60062', 'letter and digit code for capacitance values', 'secondary', { alsoBy: [ENCYCLOPAEDIA] }),
  'film-mark': cite('bench', 'value, tolerance letter and voltage in one mark', 'secondary', { alsoBy: [CAPACITOR_PAGE] }),
  'plain-number': cite('bench', 'plain number on a capacitor', 'common-practice'),
  'voltage-code': cite('bench', 'digit for the decade and letter for the value of a rated voltage', 'secondary', {
    alsoBy: [CAPACITOR_TABLES, CAPACITOR_PAGE],
  }),
  'safety-class': cite('iec-60384-14', 'classes X and Y', 'secondary', { alsoBy: ['a capacitor maker, classes and what they bridge'] }),
  'inductor-digits': cite('bench', 'two digits and a number of zeros, in microhenry', 'memory'),
  'inductor-letter': cite('bench', 'R at the point in microhenry, N in nanohenry', 'memory'),
  'inductor-bands': cite('bench', 'bands of an axial inductor, in microhenry', 'memory'),
  'zener-voltage': cite('bench', 'V at the decimal point of a regulator diode’s voltage', 'memory'),
  'written-value': cite('bench', 'value written out with its unit', 'common-practice'),
};

/** The source of a scheme, at the grade of its weakest detail. */
export function getMarkingSource(slug: SchemeSlug, ...details: readonly Grade[]): Source {
  const source = MARKING_SOURCES[slug];
  return { ...source, grade: weakestGrade([source.grade, ...details]) };
}
