import { type Refusal, refuse } from '../quantity/refusal.ts';
import { normaliseSigns } from '../quantity/unit.ts';
import { GRADES } from '../source/grade.ts';
import { parseBands, readBands } from './colour-bands.ts';
import { findSettling } from './find-settling.ts';
import { readWords } from './read-words.ts';
import type { Decoded, Part, Reading } from './reading.ts';

const LONGEST_MARK = 120; // characters; no part has room for more, house choice

const EXPECTED: Readonly<Record<Part, string>> = {
  resistor: 'a marking of a resistor such as 4K7, 103, 01C or brown black red gold',
  capacitor: 'a marking of a capacitor such as 104, 2n2, 2A104J or X2 0.1uF 275V~',
  inductor: 'a marking of an inductor such as 101, 4R7 or 47N',
  diode: 'a voltage of a regulator diode such as 5V1 (type codes of diodes are not held)',
};
const EXPECTED_OF_ANY = 'a marking of a part such as 4K7, 104, 01C, X2 0.1uF 275V~ or brown black red gold';

/**
 * Every meaning of a marking as typed, best supported first: by grade of source, and among equals values outside every series last. Values are SI. With `what`, only
 * the meanings for that part. Nothing is guessed: where a mark has several meanings all are given, with what would settle between them.
 */
export function decodeMarking(text: string, what?: Part): Decoded | Refusal {
  const expected = what === undefined ? EXPECTED_OF_ANY : EXPECTED[what];
  const clean = normaliseSigns(text).trim().replace(/\s+/g, ' ');
  if (clean === '') return refuse('empty', text, expected);
  if (clean.length > LONGEST_MARK) return refuse('marking-too-long', text, expected);
  const found = read(clean, what);
  if (found.length === 0) return refuse(what === undefined ? 'unknown-marking' : 'unknown-marking-of-part', text, expected);
  const readings = withoutRepeats(found).toSorted((one, other) => rank(one) - rank(other));
  return { text, readings, settledBy: findSettling(readings) };
}

function read(clean: string, what: Part | undefined): Reading[] {
  const bands = parseBands(clean);
  if (bands !== null) return readBands(bands).filter(({ kind }) => what === undefined || (kind === 'jumper' ? 'resistor' : kind) === what);
  const asTyped = readWords(clean, what);
  if (asTyped.length > 0) return asTyped;
  const capitals = clean.replace(/[a-z]/g, (letter) => letter.toUpperCase());
  return readWords(capitals, what).map((reading) => ({
    ...reading,
    notes: [...new Set([...reading.notes, 'letter-case-matters' as const])],
  }));
}

/** Two schemes that say the same are one reading, by the better source. */
function withoutRepeats(readings: readonly Reading[]): Reading[] {
  const kept = new Map<string, Reading>();
  for (const reading of readings) {
    const { kind, value, tolerance, voltage, temperatureCoefficient, safetyClasses } = reading;
    const key = JSON.stringify([kind, value, tolerance, voltage, temperatureCoefficient, safetyClasses]);
    const known = kept.get(key);
    if (known === undefined || rank(reading) < rank(known)) kept.set(key, reading);
  }
  return [...kept.values()];
}

function rank({ notes, source }: Reading): number {
  const perGrade = 2; // places of a grade: in a series, in none
  return GRADES.indexOf(source.grade) * perGrade + (notes.includes('in-no-series') ? 1 : 0);
}
