import { COVERAGE_OF_PLUS_MINUS } from './parse-quantity.ts';
import { type Kind, kindOf, SI_UNIT, type SiUnit, ZERO_CELSIUS_K } from './unit.ts';

/** A number ready to be set: digits, half width, unit apart, so that a page can set the unit thin. */
export interface Printed {
  /** "3.1", "−0.50", "below 0.1"; with a true minus. */
  readonly number: string;
  /** Half of the 95 % interval to the same place, or null when the uncertainty is unknown or zero. */
  readonly plusMinus: string | null;
  /** "mm", "°C", "%"; "" for a plain number. */
  readonly unit: string;
}

export interface Printable {
  readonly value: number;
  readonly unit: string;
  readonly u: number | null;
  readonly side?: 'below' | 'above' | 'anywhere' | undefined;
}

/** Units that people read instead of the SI one. */
export type ShowAs = '%' | 'h' | 'min' | 'mm' | 'mA' | 'year';

const HOUR_S = 3600;
const MINUTE_S = 60;
const YEAR_S = 365.25 * 24 * HOUR_S;
const SHOWN: Record<ShowAs, { factor: number; unit: string }> = {
  '%': { factor: 0.01, unit: '%' },
  h: { factor: HOUR_S, unit: 'h' },
  min: { factor: MINUTE_S, unit: 'min' },
  mm: { factor: 1e-3, unit: 'mm' },
  mA: { factor: 1e-3, unit: 'mA' },
  year: { factor: YEAR_S, unit: 'years' },
};
const ENGINEERING = [
  ['G', 1e9],
  ['M', 1e6],
  ['k', 1e3],
  ['', 1],
  ['m', 1e-3],
  ['µ', 1e-6],
  ['n', 1e-9],
  ['p', 1e-12],
] as const;
/** Kinds whose unit takes no prefix in print, or only the trade's. */
const FIXED: Partial<Record<Kind, { factor: number; unit: string }>> = {
  temperature: { factor: 1, unit: '°C' },
  temperatureDifference: { factor: 1, unit: 'K' },
  area: { factor: 1e-6, unit: 'mm²' },
  meltingIntegral: { factor: 1, unit: 'A²s' },
  torque: { factor: 1, unit: 'N m' },
  ratio: { factor: 1, unit: '' },
};
const DIGITS_WITHOUT_UNCERTAINTY = 4; // significant digits shown when nothing says how many are meant; house choice
const DIGITS_OF_UNCERTAINTY = 2; // JCGM 100:2008, 7.2.6: at most two

/** Prints with the digits that the uncertainty allows. Kelvin print as °C; lengths below 0.1 m as mm. */
export function formatQuantity(amount: Printable, show?: ShowAs): Printed {
  if (amount.side === 'anywhere') return { number: 'not bounded', plusMinus: null, unit: '' };
  const kind = kindOf(amount.unit as SiUnit);
  const offset = kind === 'temperature' ? ZERO_CELSIUS_K : 0;
  const value = amount.value - offset;
  const half = amount.u === null ? null : amount.u * COVERAGE_OF_PLUS_MINUS;
  const { factor, unit } = show === undefined ? scaleFor(kind, Math.max(Math.abs(value), half ?? 0)) : SHOWN[show];
  const scaled = value / factor;
  const side = amount.side === undefined ? '' : `${amount.side} `;
  if (half === null || half === 0 || amount.side !== undefined) return { number: side + significant(scaled), plusMinus: null, unit };
  const scaledHalf = half / factor;
  const place = placeOf(scaledHalf);
  return { number: fixed(scaled, place), plusMinus: fixed(scaledHalf, place), unit };
}

/** The same on one line: "3.10 ± 0.20 mm". */
export function quantityText(amount: Printable, show?: ShowAs): string {
  const printed = formatQuantity(amount, show);
  const spread = printed.plusMinus === null ? '' : ` ± ${printed.plusMinus}`;
  return `${printed.number}${spread}${printed.unit === '' ? '' : ` ${printed.unit}`}`;
}

function scaleFor(kind: Kind, size: number): { factor: number; unit: string } {
  const given = FIXED[kind];
  if (given !== undefined) return given;
  if (kind === 'mass') return { factor: 1e-3, unit: 'g' };
  if (kind === 'length') {
    const micrometres = size > 0 && size < 0.95e-4; // below about 0.1 mm
    return micrometres ? { factor: 1e-6, unit: 'µm' } : size < 1 ? { factor: 1e-3, unit: 'mm' } : { factor: 1, unit: 'm' };
  }
  if (kind === 'time' && size >= 2 * MINUTE_S) return size >= 2 * HOUR_S ? SHOWN.h : SHOWN.min;
  const symbol = SI_UNIT[kind];
  // 0.9995 and up rounds to the next prefix at four digits
  const step = ENGINEERING.find(([, factor]) => size >= factor * 0.99995) ?? (size === 0 ? ENGINEERING[3] : ENGINEERING.at(-1)!);
  return { factor: step[1], unit: step[0] + symbol };
}

/** Decimal place of the last digit shown: two digits of the half width, one when the first is large. */
function placeOf(half: number): number {
  const lead = Math.floor(Math.log10(half) + 1e-9);
  const first = half / Number(`1e${lead}`);
  const BIG_FIRST_DIGIT = 3; // 0.1 and 0.2 keep a second digit, 0.3 and above do not
  return first < BIG_FIRST_DIGIT ? lead - DIGITS_OF_UNCERTAINTY + 1 : lead;
}

function fixed(value: number, place: number): string {
  const decimals = Math.max(0, -place);
  const step = Number(`1e${Math.max(0, place)}`);
  return trueMinus((place > 0 ? Math.round(value / step) * step : value).toFixed(decimals));
}

function significant(value: number): string {
  if (value === 0) return '0';
  const text = value.toPrecision(DIGITS_WITHOUT_UNCERTAINTY);
  // far-off sizes print with an exponent, whose own zeros are not to be touched
  const plain = text.includes('e') ? String(Number(text)) : text;
  return trueMinus(plain.includes('.') && !plain.includes('e') ? plain.replace(/\.?0+$/, '') : plain);
}

function trueMinus(text: string): string {
  return /^-0(?:\.0*)?$/.test(text) ? text.slice(1) : text.replace(/^-/, '\u2212');
}
