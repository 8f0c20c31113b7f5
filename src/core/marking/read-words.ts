import { weakestGrade } from '../source/grade.ts';
import { readWord } from './mark-schemes.ts';
import { getMarkingSource } from './marking-sources.ts';
import type { NoteKey, Part, Reading, Tolerance } from './reading.ts';
import { assignVoltages } from './safety-class.ts';
import { holdsDoubtfulVoltage, type SortedWords, sortWords } from './sort-words.ts';
import { readToleranceLetter } from './tolerance-letter.ts';

/**
 * Every reading of a mark of one or more words: a value, and what is printed beside it ("X2 0.1uF 275V~", "222M Y1 400V", "10 kΩ 5 %").
 * A class or a voltage makes it a capacitor's mark. Sources: IEC 60384-14 for the classes, the scheme of the value for the rest.
 */
export function readWords(text: string, part?: Part): Reading[] {
  const asFigures = readSorted(sortWords(text, 'figures'), part);
  return holdsDoubtfulVoltage(text) ? [...asFigures, ...readSorted(sortWords(text, 'code'), part)] : asFigures;
}

function readSorted(words: SortedWords, part?: Part): Reading[] {
  if (words.values.length > 1) return [];
  const [value] = words.values;
  const rated = words.ratings.length > 0;
  const capacitorOnly = rated || words.notes.length > 0;
  if (capacitorOnly && part !== undefined && part !== 'capacitor') return [];
  if (value === undefined) return rated ? readRatingsAlone(words) : [];
  const bare = !capacitorOnly && words.share === null && words.toleranceLetter === null;
  if (bare) return readWord(value, part);
  return readWord(value, capacitorOnly ? 'capacitor' : part)
    .filter(({ kind }) => kind === 'capacitor' || (!capacitorOnly && (kind === 'resistor' || kind === 'inductor')))
    .flatMap((reading) => complete(reading, words));
}

/** Classes or one voltage without a value. */
function readRatingsAlone(words: SortedWords): Reading[] {
  const rating = rate(null, words);
  if (words.share !== null || words.toleranceLetter !== null) return [];
  if (rating.classes.length === 0 && rating.voltage === null) return [];
  const alone = rating.classes.length === 0;
  return [
    {
      kind: alone ? 'voltage-rating' : 'safety-class',
      value: alone ? rating.voltage : null,
      unit: alone ? 'V' : null,
      tolerance: null,
      temperatureCoefficient: null,
      voltage: rating.voltage,
      safetyClasses: rating.classes,
      series: null,
      scheme: alone ? 'written-value' : 'safety-class',
      source: getMarkingSource(alone ? 'written-value' : 'safety-class', ...words.grades),
      notes: rating.notes,
    },
  ];
}

/** A reading with what the other words add; none when they contradict it. */
function complete(reading: Reading, words: SortedWords): Reading[] {
  const letter = words.toleranceLetter;
  const part = reading.kind as Part;
  const read = readToleranceLetter(letter ?? undefined, part, reading.value!);
  if (letter !== null && read.tolerance === null) return [];
  const share: Tolerance | null = words.share === null ? null : { minus: words.share, plus: words.share, unit: '1' };
  const stated = [reading.tolerance, read.tolerance, share].filter((tolerance) => tolerance !== null);
  const [tolerance = null] = stated;
  if (stated.some((other) => !isSame(other, tolerance!))) return [];
  const rating = rate(reading.voltage, words);
  if (rating.contradicts) return [];
  const grades = [...words.grades, ...read.grades];
  if (rating.classes.length > 0) grades.push(getMarkingSource('safety-class').grade);
  const source = { ...reading.source, grade: weakestGrade([reading.source.grade, ...grades]) };
  const notes = [...new Set([...reading.notes, ...read.notes, ...rating.notes])];
  return [{ ...reading, tolerance, voltage: rating.voltage, safetyClasses: rating.classes, source, notes }];
}

function isSame(one: Tolerance, other: Tolerance): boolean {
  return one.minus === other.minus && one.plus === other.plus && one.unit === other.unit;
}

function rate(own: number | null, { ratings, notes }: SortedWords) {
  const volts = new Set(ratings.flatMap((word) => ('volts' in word ? [word.volts] : [])));
  const contradicts = own !== null && volts.size > 0 && !volts.has(own);
  const all = own === null || volts.size > 0 ? ratings : [...ratings, { volts: own }];
  const { classes, assigned } = assignVoltages(all);
  const [only] = volts;
  const voltage = own ?? (volts.size === 1 ? only! : null);
  const more: NoteKey[] = [...notes];
  if (classes.length > 0) more.push('class-is-safety-data');
  if (!assigned || (classes.length === 0 && voltage === null && volts.size > 1)) more.push('voltage-not-assigned');
  return { classes, voltage, notes: more, contradicts };
}
