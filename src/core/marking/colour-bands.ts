import { shiftDecimal } from '../quantity/shift-decimal.ts';
import type { Grade } from '../source/grade.ts';
import { buildReading } from './build-reading.ts';
import { COEFFICIENT_OF, type Colour, DIGIT_OF, EXPONENT_OF, type Graded, INDUCTOR_SHARE_OF, parseColour, SHARE_OF } from './colour.ts';
import type { NoteKey, Reading } from './reading.ts';

const MICRO_EXPONENT = -6; // SI brochure, prefix µ
const NO_BAND: Graded = { size: 0.2, grade: 'secondary' }; // IEC 60062: no tolerance band, ± 20 %
/** Two digits go with 5 % and wider, three with 2 % and narrower. Read in a note on labelling after IEC. */
const NARROWEST_OF_TWO_DIGITS = 0.05;
const WIDEST_OF_THREE_DIGITS = 0.02;

/** Number of bands to number of digit bands; the multiplier, the tolerance and the temperature coefficient follow, as far as there are bands. */
const DIGITS_OF_BANDS: Readonly<Record<number, number>> = { 3: 2, 4: 2, 5: 3, 6: 3 };
const BANDS_OF_AN_INDUCTOR = 4; // axial inductors, in microhenry; memory

/** The bands of a text of colour words, or null when a word is no colour. */
export function parseBands(text: string): Colour[] | null {
  const words = text.split(/[\s,;/-]+/).filter((word) => word !== '');
  const bands = words.map(parseColour);
  return bands.length > 0 && bands.every((band) => band !== null) ? bands : null;
}

/**
 * Resistors of three to six bands in ohm, axial inductors of four in microhenry, and the link with one black band.
 * Both directions are read; a direction is out when a band has no meaning in its place or the value would begin with zero.
 * Source: IEC 60062, colour code; single colours as graded with them.
 */
export function readBands(bands: readonly Colour[]): Reading[] {
  if (bands.length === 1 && bands[0] === 'black') return [buildReading('resistor', 0, 'colour-bands', { grades: ['memory'] })];
  const first = readOneWay(bands);
  const backwards = bands.toReversed();
  const same = backwards.every((band, index) => band === bands[index]);
  const last = same ? [] : readOneWay(backwards);
  if (first.length === 0 || last.length === 0) return [...first, ...last];
  return [
    ...first.map((reading) => noted(reading, 'read-from-first-band')),
    ...last.map((reading) => noted(reading, 'read-from-last-band')),
  ];
}

function noted(reading: Reading, note: NoteKey): Reading {
  return { ...reading, notes: [...reading.notes, note] };
}

function readOneWay(bands: readonly Colour[]): Reading[] {
  const digitCount = DIGITS_OF_BANDS[bands.length];
  if (digitCount === undefined) return [];
  const digits = bands.slice(0, digitCount).map((band) => DIGIT_OF[band]);
  const [multiplier, toleranceBand, coefficientBand] = bands.slice(digitCount);
  const exponent = EXPONENT_OF[multiplier!];
  if (digits.includes(undefined) || digits[0] === 0 || exponent === undefined) return [];
  const number = Number(digits.join(''));
  const inductors = bands.length === BANDS_OF_AN_INDUCTOR ? readInductor(number, exponent.size, toleranceBand!) : [];
  return [...readResistor(number, digits.length, exponent, toleranceBand, coefficientBand), ...inductors];
}

function readResistor(number: number, digitCount: number, exponent: Graded, toleranceBand?: Colour, coefficientBand?: Colour): Reading[] {
  const share = toleranceBand === undefined ? NO_BAND : SHARE_OF[toleranceBand];
  const coefficient = coefficientBand === undefined ? null : COEFFICIENT_OF[coefficientBand];
  if (share === undefined || coefficient === undefined) return [];
  const grades: Grade[] = [exponent.grade, share.grade];
  if (coefficient !== null) grades.push('memory');
  const notes: NoteKey[] = [];
  if (toleranceBand === undefined) notes.push('no-tolerance-band');
  if (toleranceBand === 'grey') notes.push('grey-tolerance-changed');
  if (digitCount === 2 ? share.size < NARROWEST_OF_TWO_DIGITS : share.size > WIDEST_OF_THREE_DIGITS)
    notes.push('digits-unusual-for-tolerance');
  const tolerance = { minus: share.size, plus: share.size, unit: '1' } as const;
  const value = shiftDecimal(number, exponent.size);
  return [buildReading('resistor', value, 'colour-bands', { tolerance, temperatureCoefficient: coefficient, grades, notes })];
}

function readInductor(number: number, exponent: number, toleranceBand: Colour): Reading[] {
  const share = INDUCTOR_SHARE_OF[toleranceBand];
  if (share === undefined) return [];
  const tolerance = { minus: share, plus: share, unit: '1' } as const;
  return [buildReading('inductor', shiftDecimal(number, exponent + MICRO_EXPONENT), 'inductor-bands', { tolerance })];
}
