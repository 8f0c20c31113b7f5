/**
 * The units a bench uses, and what they are in SI. Inside the core a plain number is always in the SI unit of its kind.
 * Sources: the SI brochure (BIPM, 9th edition, 2019) for factors and prefixes; the inch is 25.4 mm exactly (international yard and pound
 * agreement, 1959); writing habits (ohm as R, u for micro, mil) are common practice and carry no source.
 */

/** What sort of thing a number measures. A temperature and a difference of temperatures are two kinds: one has an offset, the other not. */
export type Kind =
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'capacitance'
  | 'inductance'
  | 'power'
  | 'apparentPower'
  | 'energy'
  | 'charge'
  | 'length'
  | 'area'
  | 'mass'
  | 'time'
  | 'frequency'
  | 'temperature'
  | 'temperatureDifference'
  | 'torque'
  | 'force'
  | 'fluxDensity'
  | 'meltingIntegral'
  | 'ratio';

/** SI unit in which a kind is kept, as printed in an Assessment. `ΔK` is a kelvin of difference. */
export const SI_UNIT = {
  voltage: 'V',
  current: 'A',
  resistance: 'Ω',
  capacitance: 'F',
  inductance: 'H',
  power: 'W',
  apparentPower: 'VA',
  energy: 'J',
  charge: 'C',
  length: 'm',
  area: 'm²',
  mass: 'kg',
  time: 's',
  frequency: 'Hz',
  temperature: 'K',
  temperatureDifference: 'ΔK',
  torque: 'N·m',
  force: 'N',
  fluxDensity: 'T',
  meltingIntegral: 'A²s',
  ratio: '1',
} as const satisfies Record<Kind, string>;

export type SiUnit = (typeof SI_UNIT)[Kind];

const KIND_OF = new Map<string, Kind>(Object.entries(SI_UNIT).map(([kind, unit]) => [unit, kind as Kind]));

/** The kind that an SI unit of an Assessment stands for. Throws on a unit that is not one: a defect, not bad input. */
export function kindOf(unit: SiUnit): Kind {
  const kind = KIND_OF.get(unit);
  if (kind === undefined) throw new Error(`no kind is kept in "${unit}"`);
  return kind;
}

/** What a person reads when something else was expected. */
export const KIND_IN_WORDS: Record<Kind, string> = {
  voltage: 'a voltage such as 5.1 V',
  current: 'a current such as 0.16 mA',
  resistance: 'a resistance such as 4k7 or 100 kΩ',
  capacitance: 'a capacitance such as 2.2 nF',
  inductance: 'an inductance such as 1.2 mH',
  power: 'a power such as 24 W',
  apparentPower: 'an apparent power such as 30 VA',
  energy: 'an energy such as 0.7 J',
  charge: 'a charge such as 45 µC',
  length: 'a length such as 4.9 mm',
  area: 'an area such as 19.2 mm²',
  mass: 'a mass such as 38 g',
  time: 'a time such as 90 min',
  frequency: 'a frequency such as 50 Hz',
  temperature: 'a temperature such as 105 °C',
  temperatureDifference: 'a difference of temperatures such as 2 K',
  torque: 'a torque such as 0.2 N m',
  force: 'a force such as 50 N',
  fluxDensity: 'a flux density such as 0.3 T',
  meltingIntegral: 'a melting integral such as 9.2 A²s',
  ratio: 'a plain number or a percentage',
};

/** One way to write a unit: SI value = (typed + offset) × factor. */
export interface Unit {
  readonly symbol: string;
  readonly kind: Kind;
  readonly factor: number;
  readonly offset: number;
  /** May stand behind k, m, µ ... */
  readonly prefixed: boolean;
}

const INCH_M = 0.0254; // exact
const MIL_M = INCH_M / 1000;
const MINUTE_S = 60;
const HOUR_S = 3600;
const DAY_S = 86_400;
const PERCENT = 0.01;
export const ZERO_CELSIUS_K = 273.15; // exact, SI brochure 2.3.1
const FAHRENHEIT_FACTOR = 5 / 9;
const FAHRENHEIT_OFFSET = 459.67;
const MM2_M2 = 1e-6;
const GRAM_KG = 1e-3;

function unit(kind: Kind, symbols: string, factor = 1, prefixed = true, offset = 0): Unit[] {
  return symbols.split(' ').map((symbol) => ({ symbol, kind, factor, offset, prefixed }));
}

/** Every spelling. The first of a kind with factor 1 is the one printed. */
export const UNITS: readonly Unit[] = [
  ...unit('voltage', 'V'),
  ...unit('current', 'A'),
  ...unit('resistance', 'Ω Ohm ohm ohms Ohms R'),
  ...unit('capacitance', 'F'),
  ...unit('inductance', 'H'),
  ...unit('power', 'W'),
  ...unit('apparentPower', 'VA'),
  ...unit('energy', 'J'),
  ...unit('charge', 'C'),
  ...unit('length', 'm'),
  ...unit('length', 'in inch', INCH_M, false),
  ...unit('length', 'mil mils', MIL_M, false),
  ...unit('area', 'm² m2', 1, false),
  ...unit('area', 'mm² mm2', MM2_M2, false),
  ...unit('mass', 'g', GRAM_KG),
  ...unit('time', 's sec'),
  ...unit('time', 'min', MINUTE_S, false),
  ...unit('time', 'h hr', HOUR_S, false),
  ...unit('time', 'd', DAY_S, false),
  ...unit('frequency', 'Hz'),
  ...unit('temperature', '°C degC ℃', 1, false, ZERO_CELSIUS_K),
  ...unit('temperature', '°F degF', FAHRENHEIT_FACTOR, false, FAHRENHEIT_OFFSET),
  ...unit('temperature', 'C', 1, false, ZERO_CELSIUS_K),
  ...unit('temperature', 'K', 1, false),
  ...unit('temperatureDifference', 'K', 1, false),
  ...unit('torque', 'N·m Nm'),
  ...unit('force', 'N'),
  ...unit('fluxDensity', 'T'),
  ...unit('meltingIntegral', 'A²s A2s', 1, false),
  ...unit('ratio', '%', PERCENT, false),
];

/** Prefixes a bench uses. K is accepted as kilo before ohm only, where kelvin cannot be meant. */
export const PREFIXES: Readonly<Record<string, number>> = { p: 1e-12, n: 1e-9, µ: 1e-6, m: 1e-3, k: 1e3, M: 1e6, G: 1e9 };

const ASCII = /^[\x20-\x7e]*$/; // nothing to write otherwise

/** One spelling for the signs that keyboards and files write in several ways. */
export function normaliseSigns(text: string): string {
  if (ASCII.test(text)) return text;
  return text
    .normalize('NFC')
    .replaceAll('\u03bc', 'µ') // Greek mu
    .replaceAll('\u2126', 'Ω') // ohm sign
    .replaceAll('\u2212', '-') // true minus
    .replace(/[\u00a0\u2009\u202f]/g, ' '); // no-break and thin spaces
}

export interface UnitReading {
  readonly unit: Unit;
  readonly prefix: number;
}

/** Spellings met before; a day at the bench uses a dozen of them thousands of times. */
const MET = new Map<string, readonly UnitReading[]>();
const MOST_MET = 1000; // a hostile file must not fill the memory

/** All readings of a unit text: none (unknown), one, or several ("C" is coulomb or Celsius). `text` has no outer spaces. */
export function readingsOfUnit(text: string): readonly UnitReading[] {
  const known = MET.get(text);
  if (known !== undefined) return known;
  const found = findReadings(text);
  if (MET.size < MOST_MET) MET.set(text, found);
  return found;
}

function findReadings(text: string): UnitReading[] {
  const squeezed = text.replaceAll(' ', '').replaceAll('*', '·');
  const found: UnitReading[] = [];
  for (const unit of UNITS) {
    if (!squeezed.endsWith(unit.symbol)) continue;
    const head = squeezed.slice(0, squeezed.length - unit.symbol.length);
    if (head === '') found.push({ unit, prefix: 1 });
    else if (unit.prefixed) {
      const written = head === 'u' ? 'µ' : head === 'K' && unit.kind === 'resistance' ? 'k' : head;
      const prefix = Object.hasOwn(PREFIXES, written) ? PREFIXES[written] : undefined;
      if (prefix !== undefined) found.push({ unit, prefix });
    }
  }
  return found;
}
