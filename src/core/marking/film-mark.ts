import { shiftDecimal } from '../quantity/shift-decimal.ts';
import type { Grade } from '../source/grade.ts';
import { buildReading } from './build-reading.ts';
import { capacitorDigits } from './capacitor-digits.ts';
import { capacitorLetter } from './capacitor-letter.ts';
import { parsePrintedVoltage } from './printed-voltage.ts';
import type { Reading, Scheme } from './reading.ts';
import { CAPACITOR_TOLERANCE_CLASS, readToleranceLetter } from './tolerance-letter.ts';
import { parseVoltageCode } from './voltage-code.ts';

const TOLERANCE = `[${CAPACITOR_TOLERANCE_CLASS}]`;
const CODE_FIRST = new RegExp(`^(\\d[A-Z])([1-9]\\d\\d${TOLERANCE}?)$`);
const CODE_LAST = new RegExp(`^([1-9]\\d\\d${TOLERANCE}?)(\\d[A-Z])$`);
const WITH_FIGURES = new RegExp(`^([1-9]\\d\\d${TOLERANCE}|\\d*[pnuµ]\\d*${TOLERANCE})(\\d{2,4}|\\d{1,4}[Kk]?V(?:~|AC|DC)?)$`);
const DECIMAL = new RegExp(`^(\\d{0,3}[.,]\\d{1,4})(${TOLERANCE})?(\\d{2,4}|\\d{1,4}[Kk]?V(?:~|AC|DC)?)?$`);
const WHOLE = new RegExp(`^([1-9]\\d?)(${TOLERANCE})(\\d{2,4})$`);
const MICRO_EXPONENT = -6; // SI brochure, prefix µ
/** Voltages film capacitors are rated for, in V; a mark of whole microfarad is read only with one of these. Common practice. */
const FILM_VOLTAGES = new Set([50, 63, 100, 160, 200, 250, 275, 305, 310, 400, 450, 500, 600, 630, 800, 1000, 1250, 1600, 2000]);

/**
 * A capacitor's value, tolerance letter and voltage in one mark: 2A104J is 100 nF ± 5 % 100 V, 104K400 is 100 nF ± 10 % 400 V; a printed decimal is in
 * microfarad (0.1K400, .1, 0.22J250). Values in farad, voltages in V. Sources: a hobby page's tables, the schemes of the parts of the mark.
 */
export const filmMark: Scheme = {
  slug: 'film-mark',
  part: 'capacitor',
  read: (mark) => [...readWithCode(mark), ...readWithFigures(mark), ...readMicrofarad(mark)],
};

function readWithCode(mark: string): Reading[] {
  const first = CODE_FIRST.exec(mark);
  const last = CODE_LAST.exec(mark);
  const [code, value] = first !== null ? [first[1]!, first[2]!] : last !== null ? [last[2]!, last[1]!] : [undefined, ''];
  const rated = code === undefined ? null : parseVoltageCode(code);
  return rated === null ? [] : rebuild(capacitorDigits.read(value), rated.volts, [rated.grade]);
}

function readWithFigures(mark: string): Reading[] {
  const match = WITH_FIGURES.exec(mark);
  if (match === null) return [];
  const voltage = voltageOf(match[2]!);
  return voltage === null ? [] : rebuild([...capacitorDigits.read(match[1]!), ...capacitorLetter.read(match[1]!)], voltage, []);
}

function readMicrofarad(mark: string): Reading[] {
  const decimal = DECIMAL.exec(mark);
  const whole = WHOLE.exec(mark);
  const match = decimal ?? whole;
  if (match === null) return [];
  const voltage = match[3] === undefined ? null : voltageOf(match[3]);
  if (match[3] !== undefined && voltage === null) return [];
  if (decimal === null && !(voltage !== null && FILM_VOLTAGES.has(voltage))) return [];
  const value = shiftDecimal(Number(match[1]!.replace(',', '.')), MICRO_EXPONENT);
  if (value === 0) return [];
  const { tolerance, grades, notes } = readToleranceLetter(match[2], 'capacitor', value);
  return [buildReading('capacitor', value, 'film-mark', { tolerance, voltage, grades, notes: [...notes, 'taken-as-microfarad'] })];
}

function voltageOf(figures: string): number | null {
  return parsePrintedVoltage(/\d$/.test(figures) ? `${figures}V` : figures)?.volts ?? null;
}

function rebuild(readings: readonly Reading[], voltage: number, grades: readonly Grade[]): Reading[] {
  return readings.map((reading) =>
    buildReading('capacitor', reading.value!, 'film-mark', {
      tolerance: reading.tolerance,
      voltage,
      grades: [reading.source.grade, ...grades],
      notes: reading.notes.filter((note) => note !== 'in-no-series'),
    }),
  );
}
