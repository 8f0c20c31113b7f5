import { shiftDecimal } from '../quantity/shift-decimal.ts';
import type { Grade } from '../source/grade.ts';
import { parsePrintedVoltage } from './printed-voltage.ts';
import type { NoteKey } from './reading.ts';
import { parseSafetyClasses, type RatingWord } from './safety-class.ts';
import { CAPACITOR_TOLERANCE_CLASS } from './tolerance-letter.ts';
import { parseVoltageCode } from './voltage-code.ts';

const NUMBER_BEFORE_UNIT = /(\d) (?=(?:[pnuµmkKMG]?(?:F|H|Ω|[Oo]hms?)|[kK]?V(?:~|AC|DC)?|°C|℃)(?:[ /]|$))/g;
const CLIMATE = /^\d{2}\/\d{3}\/\d{2}(?:\/[A-D])?$/; // coldest, hottest, days of damp heat: IEC 60068-1
const TEMPERATURE = /^[-+]?\d{1,3}(?:[~/][-+]?\d{1,3})?(?:°C|℃)$/; // of the can of an electrolytic
const DIELECTRIC = /^(?:M?K[PTSC]|CBB\d{0,2}|CL\d\d|[XYZ][4-8][A-Z]|C[0O]G|NP[0O])$/; // film letters, ceramic classes: common practice
const PER_CENT = /^±?(\d{1,2}(?:[.,]\d{1,2})?)%$/;
const TOLERANCE_LETTER = new RegExp(`^[${CAPACITOR_TOLERANCE_CLASS}]$`);
const PERCENT_EXPONENT = -2;

/** The words of a mark by what they are. `values` are those that only a scheme can read. */
export interface SortedWords {
  readonly values: readonly string[];
  /** Classes and voltages in the order printed. */
  readonly ratings: readonly RatingWord[];
  readonly share: number | null;
  readonly toleranceLetter: string | null;
  readonly grades: readonly Grade[];
  readonly notes: readonly NoteKey[];
}

const FIGURES_OR_CODE = /(?:^|[ /])[0-4]V(?:[ /]|$)/;

/** Whether a word of the mark is one digit and V: 1V is 35 V by the code of rated voltages, and 1 V written out. */
export function holdsDoubtfulVoltage(text: string): boolean {
  return FIGURES_OR_CODE.test(text);
}

/**
 * Takes a mark of several words apart. Of two value words, one that is a voltage code is the voltage (104J 2A). `digitAndV` says what 1V is taken for.
 */
export function sortWords(text: string, digitAndV: 'figures' | 'code'): SortedWords {
  const words = text
    .replaceAll('+/-', '±')
    .replace(/\(([A-Z])\)/g, '$1')
    .replace(/± /g, '±')
    .replace(/(\d) %/g, '$1%')
    .replace(NUMBER_BEFORE_UNIT, '$1')
    .split(' ')
    .flatMap((word) => (CLIMATE.test(word) || TEMPERATURE.test(word) ? [word] : word.split('/')))
    .filter((word) => word !== '');
  const values: { word: string; at: number }[] = [];
  const ratings: RatingWord[] = [];
  const notes = new Set<NoteKey>();
  const grades: Grade[] = [];
  let share: number | null = null;
  let toleranceLetter: string | null = null;
  for (const word of words) {
    const classes = parseSafetyClasses(word);
    const voltage = digitAndV === 'code' && FIGURES_OR_CODE.test(word) ? null : parsePrintedVoltage(word);
    const percent = PER_CENT.exec(word);
    if (CLIMATE.test(word)) notes.add('climate-not-decoded');
    else if (TEMPERATURE.test(word)) notes.add('temperature-not-decoded');
    else if (DIELECTRIC.test(word)) notes.add('dielectric-not-decoded');
    else if (classes !== null) ratings.push(...classes.map((name) => ({ name })));
    else if (voltage !== null) {
      ratings.push({ volts: voltage.volts });
      if (voltage.nature !== null) notes.add(`${voltage.nature}-voltage`);
    } else if (percent !== null && share === null) share = shiftDecimal(Number(percent[1]!.replace(',', '.')), PERCENT_EXPONENT);
    else if (TOLERANCE_LETTER.test(word) && toleranceLetter === null) toleranceLetter = word;
    else values.push({ word, at: ratings.length });
  }
  const codes = values.filter(({ word }) => parseVoltageCode(word) !== null);
  if (values.length === 2 && codes.length === 1) {
    const [code] = codes;
    const rated = parseVoltageCode(code!.word)!;
    values.splice(values.indexOf(code!), 1);
    ratings.splice(code!.at, 0, { volts: rated.volts });
    grades.push(rated.grade);
  }
  return { values: values.map(({ word }) => word), ratings, share, toleranceLetter, grades, notes: [...notes] };
}
