import type { Decoded, NoteKey, Reading, ReadingKind, SafetyClass, SchemeSlug, SettleKey, Tolerance } from '../core/marking/reading.ts';
import { quantityText } from '../core/quantity/format-quantity.ts';

const KINDS: Readonly<Record<ReadingKind, string>> = {
  resistor: 'resistor',
  capacitor: 'capacitor',
  inductor: 'inductor',
  diode: 'regulator diode',
  jumper: 'link',
  'voltage-rating': 'rated voltage',
  'safety-class': 'safety class',
};

const SCHEMES: Readonly<Record<SchemeSlug, string>> = {
  jumper: 'zeros for a link',
  'three-digit': 'two digits and a number of zeros, in Ω',
  'four-digit': 'three digits and a number of zeros, in Ω',
  'letter-at-point': 'letter at the decimal point',
  'milliohm-letter': 'L or m at the decimal point of a milliohm value',
  'e96-code': 'number of a value of E96 and a multiplier letter',
  'letter-first': 'multiplier letter and number of a value of E24 or E12',
  'colour-bands': 'colour bands',
  'capacitor-digits': 'two digits and a number of zeros, in pF',
  'capacitor-letter': 'letter at the decimal point',
  'film-mark': 'value, tolerance and voltage in one mark',
  'plain-number': 'plain number',
  'voltage-code': 'digit and letter of a rated voltage',
  'safety-class': 'safety class',
  'inductor-digits': 'two digits and a number of zeros, in µH',
  'inductor-letter': 'letter at the decimal point, in µH or nH',
  'inductor-bands': 'colour bands, in µH',
  'zener-voltage': 'V at the decimal point',
  'written-value': 'value with its unit',
};

const NOTES: Readonly<Record<NoteKey, string>> = {
  'in-no-series': 'stands in none of the series E3 to E192',
  'underline-may-mean-current-sense':
    'a line under or over the mark can mean a current-sense part of much lower value; it cannot be typed, so look for it',
  'multiplier-letter-disputed': 'tables print this multiplier letter differently',
  'letter-case-matters': 'capital and small letters mean different things here, and prints do not always keep them apart',
  'tolerance-set-by-code': 'the tolerance goes with the kind of code, it is not marked',
  'tolerance-letter-depends-on-size':
    'the letter counts picofarad below 10 pF and per cent above by one rule, by another it always means the same',
  'read-from-first-band': 'read from the band typed first',
  'read-from-last-band': 'read from the band typed last',
  'digits-unusual-for-tolerance': 'two digit bands go with ± 5 % and wider, three with ± 2 % and narrower; this one is otherwise',
  'grey-tolerance-changed': 'grey meant ± 0.05 % before 2016',
  'no-tolerance-band': 'no tolerance band counts as ± 20 %',
  'eight-and-nine-shrink': 'a third digit 9 stands for × 0.1, 8 for × 0.01',
  'taken-as-microfarad': 'a number without unit, taken as µF',
  'taken-as-picofarad': 'a number without unit, taken as pF',
  'alternating-voltage': 'the voltage is alternating',
  'direct-voltage': 'the voltage is direct',
  'class-is-safety-data': 'the voltage of a safety class is the mains it may stand on, not what the part withstands otherwise',
  'voltage-not-assigned': 'several voltages are printed; which belongs to what is not plain from their order',
  'dielectric-not-decoded': 'the letters of the dielectric are not decoded',
  'climate-not-decoded': 'the climatic category is not decoded',
  'temperature-not-decoded': 'the temperature printed is not decoded',
};

const SETTLED: Readonly<Record<SettleKey, string>> = {
  'board-letter': 'the letter beside the part on the board (R, C, L, D)',
  'measure-resistance': 'measure the resistance, part out of the circuit',
  'measure-capacitance': 'measure the capacitance, part discharged and out of the circuit',
  'measure-inductance': 'measure the inductance, part out of the circuit',
  'band-spacing': 'the wider gap stands before the tolerance band',
  'data-sheet': 'the maker’s data sheet',
};

const STANDS: Readonly<Record<SafetyClass['stands'], string>> = {
  'line-to-line': 'between the lines, never across the barrier',
  basic: 'across basic or supplementary insulation',
  reinforced: 'alone across double or reinforced insulation',
};

const SURE: Readonly<Record<Reading['source']['grade'], string>> = {
  'official-text': 'read in the publication',
  'public-extract': 'read in an extract of the publisher',
  secondary: 'read in a copy',
  'common-practice': 'common practice',
  reasoned: 'reasoned',
  memory: 'from memory, not verified',
};
const PER_MILLION = 1e-6;
const DIGITS = 6; // enough for every value a code can hold

/** One mark for a person: every meaning with where it comes from, and what would settle between them. */
export function decodeText({ text, readings, settledBy }: Decoded): string {
  const lines = [`${text}${readings.length > 1 ? `: ${readings.length} meanings` : ''}`];
  for (const reading of readings) {
    lines.push(`  ${headOf(reading)}`);
    lines.push(
      `    by: ${SCHEMES[reading.scheme]} (${reading.source.publication}, ${reading.source.place}; ${SURE[reading.source.grade]})`,
    );
    for (const dispute of reading.source.disagrees ?? [])
      if (reading.notes.includes('multiplier-letter-disputed')) lines.push(`    disputed: ${dispute}`);
    for (const { name, voltage, stands } of reading.safetyClasses)
      lines.push(`    ${name}${voltage === null ? '' : ` at ${amount(voltage, 'V')}`}: ${STANDS[stands]}`);
    for (const note of reading.notes) lines.push(`    note: ${NOTES[note]}`);
  }
  if (settledBy.length > 0) lines.push('  settled by:', ...settledBy.map((key) => `    ${SETTLED[key]}`));
  return `${lines.join('\n')}\n`;
}

function headOf(reading: Reading): string {
  const { kind, value, unit, tolerance, temperatureCoefficient, voltage, safetyClasses, series } = reading;
  const parts = [KINDS[kind]];
  if (value !== null && unit !== null) parts.push(amount(value, unit));
  if (tolerance !== null) parts.push(toleranceText(tolerance));
  if (temperatureCoefficient !== null) parts.push(`± ${plain(temperatureCoefficient / PER_MILLION)} ppm/K`);
  if (voltage !== null && kind !== 'voltage-rating') parts.push(amount(voltage, 'V'));
  if (safetyClasses.length > 0) parts.push(safetyClasses.map(({ name }) => name).join(' '));
  if (series !== null) parts.push(`in ${series}`);
  return parts.join(', ');
}

function toleranceText({ minus, plus, unit }: Tolerance): string {
  const [low, high] = [minus, plus].map((size) => (unit === '1' ? `${plain(size * 100)} %` : amount(size, unit)));
  return minus === plus ? `± ${low}` : `−${low} +${high}`;
}

function amount(value: number, unit: string): string {
  return quantityText({ value, unit, u: null });
}

function plain(value: number): string {
  return String(Number(value.toPrecision(DIGITS)));
}
