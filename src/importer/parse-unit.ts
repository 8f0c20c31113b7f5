/** Units as instruments write them, from symbol or word to one usual symbol. What is not listed is not known and gets asked about. */

export type Dimension =
  | 'voltage'
  | 'current'
  | 'power'
  | 'resistance'
  | 'frequency'
  | 'time'
  | 'temperature'
  | 'charge'
  | 'energy'
  | 'capacitance'
  | 'inductance'
  | 'ratio'
  | 'level'
  | 'angle'
  | 'rate'
  | 'number';

export interface Unit {
  /** The usual symbol: V, mA, °C, µs. */
  readonly symbol: string;
  readonly dimension: Dimension;
  /** The symbol without its prefix, and the power of ten the prefix stands for. */
  readonly base: string;
  readonly power: number;
  /** "rms", "pp", "dc": said of the quantity, not of the unit; '' when bare. */
  readonly said: string;
}

const PREFIXES: readonly (readonly [symbol: string, word: string, power: number])[] = [
  ['p', 'pico', -12],
  ['n', 'nano', -9],
  ['µ', 'micro', -6],
  ['m', 'milli', -3],
  ['k', 'kilo', 3],
  ['M', 'mega', 6],
  ['G', 'giga', 9],
];

interface Base {
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly words: readonly string[];
  readonly otherSymbols?: readonly string[];
  readonly prefixes: string;
}

/**
 * Prefixes are only those in use on a bench: with mega left out for volts and amperes, a header shouted in capitals ("MV", "MA") is
 * unknown and asked about instead of being read a thousand million times too large.
 */
const BASES: readonly Base[] = [
  { symbol: 'V', dimension: 'voltage', words: ['volt', 'volts'], prefixes: 'nµmk' },
  { symbol: 'A', dimension: 'current', words: ['ampere', 'amperes', 'amp', 'amps'], prefixes: 'pnµmk' },
  { symbol: 'W', dimension: 'power', words: ['watt', 'watts'], prefixes: 'nµmk' },
  { symbol: 'VA', dimension: 'power', words: ['voltampere', 'voltamperes', 'volt-ampere', 'volt-amperes'], prefixes: 'mk' },
  { symbol: 'var', dimension: 'power', words: ['vars'], otherSymbols: ['VAr', 'VAR', 'Var'], prefixes: 'mk' },
  {
    symbol: 'Ω',
    dimension: 'resistance',
    words: ['ohm', 'ohms'],
    otherSymbols: ['\u2126', 'Ohm', 'ohm', 'Ohms', 'ohms'],
    prefixes: 'µmkMG',
  },
  { symbol: 'Hz', dimension: 'frequency', words: ['hertz', 'hz'], prefixes: 'mkMG' },
  { symbol: 's', dimension: 'time', words: ['second', 'seconds', 'sec', 'secs'], otherSymbols: ['sec'], prefixes: 'pnµm' },
  { symbol: 'F', dimension: 'capacitance', words: ['farad', 'farads'], prefixes: 'pnµm' },
  { symbol: 'H', dimension: 'inductance', words: ['henry', 'henries'], prefixes: 'nµm' },
  { symbol: 'J', dimension: 'energy', words: ['joule', 'joules'], prefixes: 'µmk' },
  { symbol: 'Wh', dimension: 'energy', words: ['watt-hour', 'watt-hours', 'watthour', 'watthours'], prefixes: 'µmk' },
  { symbol: 'Ah', dimension: 'charge', words: ['ampere-hour', 'ampere-hours', 'amp-hour', 'amp-hours'], prefixes: 'µmk' },
  {
    symbol: 'Sa/s',
    dimension: 'rate',
    words: ['samples per second'],
    otherSymbols: ['S/s', 'samples/s', 'Sample/s', 'Samples/s', 'sample/s'],
    prefixes: 'kMG',
  },
];

/** Units without prefixes: spellings (small letters matter not) to symbol. */
const PLAIN: readonly (readonly [symbol: string, dimension: Dimension, spellings: readonly string[]])[] = [
  [
    '°C',
    'temperature',
    ['°c', 'ºc', '℃', '° c', 'degc', 'deg c', 'deg. c', 'deg_c', 'celsius', 'degree celsius', 'degrees celsius', 'degrees c'],
  ],
  ['°F', 'temperature', ['°f', 'ºf', '℉', '° f', 'degf', 'deg f', 'deg. f', 'fahrenheit', 'degrees fahrenheit']],
  ['K', 'temperature', ['kelvin', 'kelvins']],
  ['min', 'time', ['min', 'mins', 'minute', 'minutes']],
  ['h', 'time', ['hr', 'hrs', 'hour', 'hours']],
  ['d', 'time', ['day', 'days']],
  ['%', 'ratio', ['%', 'percent', 'per cent', 'pct', '%rh', '% rh', '%rf']],
  ['ppm', 'ratio', ['ppm']],
  ['dB', 'level', ['db']],
  ['dBm', 'level', ['dbm']],
  ['dBV', 'level', ['dbv']],
  ['dBµV', 'level', ['dbuv', 'dbµv', 'dbμv']],
  ['°', 'angle', ['°', 'deg', 'degree', 'degrees']],
  ['rad', 'angle', ['rad', 'radian', 'radians']],
  ['1', 'number', ['1', 'sequence', 'index', 'sample', 'samples', 'point', 'points', 'count', 'counts']],
];

/** Symbols whose case or shortness matters. */
const EXACT: readonly (readonly [spelling: string, symbol: string, dimension: Dimension])[] = [
  ['K', 'K', 'temperature'],
  ['h', 'h', 'time'],
];

const SAID = /^(?:[ _-]?(rms|RMS|pp|PP|pk-pk|p-p|pk|PK|peak|dc|DC|ac|AC|avg|mean|eff))$/;

const BY_SYMBOL = new Map<string, Unit>();
const BY_WORD = new Map<string, Unit>();
for (const base of BASES) {
  const spelled = [base.symbol, ...(base.otherSymbols ?? [])];
  const own: Unit = { symbol: base.symbol, dimension: base.dimension, base: base.symbol, power: 0, said: '' };
  for (const spelling of spelled) BY_SYMBOL.set(spelling, own);
  for (const word of base.words) BY_WORD.set(word, own);
  for (const [symbol, word, power] of PREFIXES) {
    if (!base.prefixes.includes(symbol)) continue;
    const unit: Unit = { ...own, symbol: symbol + base.symbol, power };
    const signs = symbol === 'µ' ? ['µ', 'μ', 'u'] : [symbol];
    for (const sign of signs) for (const spelling of spelled) BY_SYMBOL.set(sign + spelling, unit);
    for (const name of base.words) if (name.length > 2) BY_WORD.set(word + name, unit);
  }
}
for (const [symbol, dimension, spellings] of PLAIN) {
  for (const spelling of spellings) BY_WORD.set(spelling, { symbol, dimension, base: symbol, power: 0, said: '' });
}
for (const [spelling, symbol, dimension] of EXACT) BY_SYMBOL.set(spelling, { symbol, dimension, base: symbol, power: 0, said: '' });

const LONGEST_UNIT = 24; // characters; longer text is no unit

/** The unit a text names, or null when it names none that is known without guessing. */
export function findUnit(text: string): Unit | null {
  if (text === '' || text.length > LONGEST_UNIT) return null;
  const plain = BY_SYMBOL.get(text) ?? BY_WORD.get(text.toLowerCase());
  if (plain !== undefined) return plain;
  for (const base of ['V', 'A']) {
    const at = text.indexOf(base);
    if (at < 0 || at > 1) continue;
    const said = SAID.exec(text.slice(at + 1))?.[1];
    const unit = BY_SYMBOL.get(text.slice(0, at + 1));
    // "ADC" and "AAC" are converters and codecs as often as amperes.
    if (said !== undefined && unit !== undefined && !/^(ADC|AAC)$/.test(text)) return { ...unit, said };
  }
  return null;
}

/** Every symbol an answer may name, the usual ones of a bench first. */
export const UNIT_SYMBOLS: readonly string[] = [
  ...new Set([
    'V',
    'mV',
    'A',
    'mA',
    'µA',
    'W',
    'VA',
    'var',
    'Hz',
    's',
    'ms',
    'µs',
    '°C',
    '°F',
    'K',
    'Ω',
    '%',
    '1',
    ...[...BY_SYMBOL.values()].map((u) => u.symbol),
    ...[...BY_WORD.values()].map((u) => u.symbol),
  ]),
];

const MINUTE_S = 60;
const HOUR_S = 3600;
const DAY_S = 86400;
const LONG_TIMES: Readonly<Record<string, number>> = { min: MINUTE_S, h: HOUR_S, d: DAY_S };

/** A number of a unit of time in seconds, rounded once. */
export function toSeconds(value: number, unit: Unit): number {
  const factor = LONG_TIMES[unit.symbol];
  if (factor !== undefined) return value * factor;
  // Division by an exact power of ten rounds once; multiplication by an inexact negative power would round twice.
  return unit.power < 0 ? value / Number(`1e${-unit.power}`) : value * Number(`1e${unit.power}`);
}
