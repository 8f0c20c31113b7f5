import { shiftDecimal } from '../quantity/shift-decimal.ts';
import type { Grade } from '../source/grade.ts';
import type { NoteKey, Part, Tolerance } from './reading.ts';

const PICO_EXPONENT = -12; // SI brochure, prefix p
const PERCENT_EXPONENT = -2;
/** Up to here a capacitor's letter is taken as an amount in picofarad, above as a share. IEC 60062, from memory. */
const SMALL_CAPACITOR_F = 1e-11;

interface Letter {
  /** Per cent, or picofarad where `pico`. */
  readonly minus: number;
  readonly plus: number;
  readonly pico?: true;
  readonly grade: Grade;
}

function even(size: number, grade: Grade): Letter {
  return { minus: size, plus: size, grade };
}

/** IEC 60062, letters for symmetrical tolerances of resistors, from memory. Range ± 0.01 % to ± 30 %. */
const RESISTOR_LETTERS: Readonly<Record<string, Letter>> = {
  L: even(0.01, 'memory'),
  P: even(0.02, 'memory'),
  W: even(0.05, 'memory'),
  B: even(0.1, 'memory'),
  C: even(0.25, 'memory'),
  D: even(0.5, 'memory'),
  F: even(1, 'memory'),
  G: even(2, 'memory'),
  H: even(3, 'memory'),
  J: even(5, 'memory'),
  K: even(10, 'memory'),
  M: even(20, 'memory'),
  N: even(30, 'memory'),
};

/** Code tables of capacitor makers (B to M); Z, and the lopsided ones of IEC 60062, from memory. */
const CAPACITOR_LETTERS: Readonly<Record<string, Letter>> = {
  B: { minus: 0.1, plus: 0.1, pico: true, grade: 'secondary' },
  C: { minus: 0.25, plus: 0.25, pico: true, grade: 'secondary' },
  D: { minus: 0.5, plus: 0.5, pico: true, grade: 'secondary' },
  F: even(1, 'secondary'),
  G: even(2, 'secondary'),
  H: even(3, 'memory'),
  J: even(5, 'secondary'),
  K: even(10, 'secondary'),
  M: even(20, 'secondary'),
  N: even(30, 'memory'),
  Q: { minus: 10, plus: 30, grade: 'memory' },
  T: { minus: 10, plus: 50, grade: 'memory' },
  S: { minus: 20, plus: 50, grade: 'memory' },
  Z: { minus: 20, plus: 80, grade: 'memory' },
};

export interface ReadTolerance {
  readonly tolerance: Tolerance | null;
  readonly grades: readonly Grade[];
  readonly notes: readonly NoteKey[];
}

/** The letters as the inside of a character class, for the patterns of marks. */
export const RESISTOR_TOLERANCE_CLASS = Object.keys(RESISTOR_LETTERS).join('');
export const CAPACITOR_TOLERANCE_CLASS = Object.keys(CAPACITOR_LETTERS).join('');

/**
 * What a tolerance letter says of a part of this value (SI): shares of the value, or farad for the small capacitors' letters. No letter, no tolerance.
 * Inductors use the resistors' letters (memory).
 */
export function readToleranceLetter(letter: string | undefined, part: Part, value: number): ReadTolerance {
  const known = (part === 'capacitor' ? CAPACITOR_LETTERS : RESISTOR_LETTERS)[letter ?? ''];
  if (known === undefined) return { tolerance: null, grades: [], notes: [] };
  const exponent = known.pico === true ? PICO_EXPONENT : PERCENT_EXPONENT;
  const tolerance: Tolerance = {
    minus: shiftDecimal(known.minus, exponent),
    plus: shiftDecimal(known.plus, exponent),
    unit: known.pico === true ? 'F' : '1',
  };
  const small = value < SMALL_CAPACITOR_F;
  const disputed = part === 'capacitor' && (known.pico === true ? !small : small && (letter === 'F' || letter === 'G'));
  return { tolerance, grades: [known.grade], notes: disputed ? ['tolerance-letter-depends-on-size'] : [] };
}
