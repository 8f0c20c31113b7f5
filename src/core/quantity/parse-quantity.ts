import { parseNumber, type WrittenNumber } from './parse-number.ts';
import { isRefusal, type Refusal, refuse } from './refusal.ts';
import { powerOfTen, shiftDecimal } from './shift-decimal.ts';
import { KIND_IN_WORDS, type Kind, normaliseSigns, PREFIXES, readingsOfUnit, SI_UNIT, type SiUnit, UNITS } from './unit.ts';

/** A quantity as a person wrote it. Numbers are SI. */
export interface Quantity {
  readonly text: string;
  readonly kind: Kind;
  readonly value: number;
  readonly unit: SiUnit;
  /** Standard uncertainty if the text states one ("± 0.1 mm" is half of a 95 % interval, "4.9(1)" is one standard uncertainty), else null. */
  readonly u: number | null;
  /** "< 0.1 mm" is below, "> 2 GOhm" above: the value is a bound. */
  readonly side?: 'below' | 'above';
  /** One step of the last digit written, in the SI unit. */
  readonly lastDigit: number;
}

/** What "±" without a word means here: half the width of a 95 % interval (JCGM 100:2008, 7.2.3: expanded uncertainty, k = 2). */
export const COVERAGE_OF_PLUS_MINUS = 2;

const SIDES: readonly [RegExp, 'below' | 'above'][] = [
  [/^(?:<=?|≤|below )\s*/, 'below'],
  [/^(?:>=?|≥|above )\s*/, 'above'],
];
const LETTER_AS_POINT = /^([+-]?\d*)([RrkKMGpnuµmV])(\d*)$/; // 4k7, 0R22, R47, 100R, 2n2, 3V3: IEC 60062
const MINUTES = 60;
const HOURS_MINUTES = /^(\d+)\s*h\s*(\d{1,2})\s*(?:min)?$/;
const CONCISE = /^([+-]?\d+(?:[.,]\d+)?)\((\d+)\)\s*(.*)$/;
const NUMBER_THEN_UNIT = /^([+-]?(?:\d{1,3}(?: \d{3})+|\d+)?(?:[.,]\d*)?(?:[eE][+-]?\d+)?)\s*(.*)$/;

/**
 * Reads a quantity. With `expected` given, any other dimension is refused, and a spelling that fits two kinds is settled by it
 * ("85 C" is a temperature where a temperature is asked for); without it such a spelling is refused as ambiguous.
 */
export function parseQuantity(text: string, expected?: Kind): Quantity | Refusal {
  if (text.length > LONGEST_KEPT) return readQuantity(text, expected);
  const key = `${expected ?? ''} ${text}`;
  const known = READ.get(key);
  if (known !== undefined) return known;
  const read = readQuantity(text, expected);
  if (READ.size >= MOST_READ) READ.clear();
  READ.set(key, read);
  return read;
}

/** Texts read before: those of a case are read again at every judgement. */
const READ = new Map<string, Quantity | Refusal>();
const MOST_READ = 10_000; // about ten long cases
const LONGEST_KEPT = 60; // characters

function readQuantity(text: string, expected?: Kind): Quantity | Refusal {
  const clean = normaliseSigns(text).trim();
  const wanted = expected === undefined ? 'a quantity with its unit, such as 4.9 mm' : KIND_IN_WORDS[expected];
  if (clean === '') return refuse('empty', text, wanted);
  for (const [pattern, side] of SIDES) {
    if (!pattern.test(clean)) continue;
    const bound = parseQuantity(clean.replace(pattern, ''), expected);
    if (isRefusal(bound)) return { ...bound, got: text };
    if (bound.side !== undefined || bound.u !== null)
      return refuse('side-and-uncertainty', text, 'one bound without an uncertainty, such as < 0.1 mm');
    return { ...bound, text, side };
  }
  const plusMinus = clean.split(/\s*(?:±|\+\/-|\+-)\s*/);
  if (plusMinus.length > 2) return refuse('not-a-quantity', text, 'one value and one uncertainty, such as 4.9 mm ± 0.1 mm');
  if (plusMinus.length === 2) return parseWithUncertainty(text, plusMinus as [string, string], expected, wanted);
  const concise = CONCISE.exec(clean);
  if (concise !== null) return parseConcise(text, concise, expected, wanted);
  return parseBare(text, clean, expected, wanted);
}

function parseBare(text: string, clean: string, expected: Kind | undefined, wanted: string): Quantity | Refusal {
  const letter = LETTER_AS_POINT.exec(clean);
  if (letter !== null) {
    const read = parseLetterAsPoint(text, letter, expected);
    if (read !== null) return read;
  }
  const hours = HOURS_MINUTES.exec(clean);
  if (hours !== null && Number(hours[2]) >= MINUTES) return refuse('not-a-quantity', text, 'minutes below 60, such as 1h30');
  if (hours !== null) return inUnit(text, { value: Number(hours[1]) * MINUTES + Number(hours[2]), lastDigit: 1 }, 'min', expected, wanted);
  const parts = NUMBER_THEN_UNIT.exec(clean);
  if (parts === null || parts[1] === '' || parts[1] === undefined) return refuse('not-a-quantity', text, wanted);
  const number = parseNumber(parts[1]);
  if (isRefusal(number)) return { ...number, got: text };
  return inUnit(text, number, (parts[2] ?? '').trim(), expected, wanted);
}

function inUnit(text: string, number: WrittenNumber, unitText: string, expected: Kind | undefined, wanted: string): Quantity | Refusal {
  if (unitText === '') {
    if (expected === undefined || expected === 'ratio')
      return { text, kind: 'ratio', value: number.value, unit: '1', u: null, lastDigit: number.lastDigit };
    return refuse('no-unit', text, `${wanted}, with its unit`);
  }
  const all = readingsOfUnit(unitText);
  if (all.length === 0) {
    const other = nearestUnit(unitText, expected);
    return refuse('unknown-unit', text, wanted, other === undefined ? {} : { suggestion: `${textBefore(text, unitText)}${other}` });
  }
  const fitting = expected === undefined ? all : all.filter((reading) => reading.unit.kind === expected);
  if (fitting.length === 0) return refuse('wrong-dimension', text, wanted);
  const kinds = new Set(fitting.map((reading) => reading.unit.kind));
  if (kinds.size > 1) return refuse('ambiguous-unit', text, `a unit with one meaning: "${unitText}" can be ${[...kinds].join(' or ')}`);
  const { unit, prefix } = fitting[0]!;
  const shifted = number.value + unit.offset;
  const scale = scaled(unit.factor, prefix);
  const value = scaled(shifted, scale);
  return { text, kind: unit.kind, value, unit: SI_UNIT[unit.kind], u: null, lastDigit: scaled(number.lastDigit, scale) };
}

function scaled(value: number, factor: number): number {
  const exponent = powerOfTen(factor);
  return exponent === null ? value * factor : shiftDecimal(value, exponent);
}

function textBefore(text: string, unitText: string): string {
  return text.slice(0, Math.max(0, text.lastIndexOf(unitText)));
}

/** Prefixes in the order in which a bench uses them: "mhz" is MHz. */
const USUAL_FIRST: Record<string, readonly string[]> = { frequency: ['M', 'k', 'G', 'm', 'µ', 'n', 'p'] };
const USUAL = ['m', 'k', 'M', 'µ', 'n', 'p', 'G'];

/** The spelling of a known unit that differs only by case: "mhz", "KHZ". */
function nearestUnit(unitText: string, expected: Kind | undefined): string | undefined {
  const low = unitText.replaceAll(' ', '').toLowerCase();
  for (const unit of UNITS) {
    if (expected !== undefined && unit.kind !== expected) continue;
    if (low.length < 2) continue; // one letter alone is no slip of the shift key
    for (const prefix of unit.prefixed ? ['', ...(USUAL_FIRST[unit.kind] ?? USUAL)] : ['']) {
      if ((prefix + unit.symbol).toLowerCase() === low) return prefix + unit.symbol;
    }
  }
  return undefined;
}

/** "4k7": the letter stands at the decimal point. Null when the letter does not fit what was expected. */
function parseLetterAsPoint(text: string, match: RegExpExecArray, expected: Kind | undefined): Quantity | null {
  const [, before = '', letter = '', after = ''] = match;
  if (before === '' && (after === '' || letter !== 'R')) return null;
  const kind = kindOfLetter(letter, expected);
  if (kind === null || (expected !== undefined && expected !== kind)) return null;
  if (after === '' && letter !== 'R' && letter !== 'r') {
    // "100k", "22n": the trade writes it, but without a letter at the point it is a prefix that wants its unit unless a part value is asked for
    if (expected !== 'resistance' && expected !== 'capacitance' && expected !== 'inductance') return null;
  }
  const number = parseNumber(`${before === '' || before === '-' || before === '+' ? `${before}0` : before}.${after === '' ? '0' : after}`);
  if (isRefusal(number)) return null;
  const prefix =
    letter === 'R' || letter === 'r' || letter === 'V' ? 1 : (PREFIXES[letter === 'u' ? 'µ' : letter === 'K' ? 'k' : letter] ?? 1);
  const step = after === '' ? 1 : number.lastDigit;
  return {
    text,
    kind,
    value: scaled(number.value, prefix),
    unit: SI_UNIT[kind],
    u: null,
    lastDigit: scaled(step, prefix),
  };
}

function kindOfLetter(letter: string, expected: Kind | undefined): Kind | null {
  if (letter === 'V') return 'voltage';
  if ('RrkKMG'.includes(letter)) return 'resistance';
  if ('pnuµm'.includes(letter)) return expected === 'inductance' ? 'inductance' : 'capacitance';
  return null;
}

function parseWithUncertainty(
  text: string,
  [left, right]: [string, string],
  expected: Kind | undefined,
  wanted: string,
): Quantity | Refusal {
  if (!/^-?[\d.,\s]+(?:[eE][+-]?\d+)?\s*[^()<>≤≥±]*\)?[^()<>≤≥±]*$/.test(right))
    return refuse('not-a-quantity', text, 'a plain half width behind ±, such as ± 0.1 mm');
  const opened = left.startsWith('(') && /^[^)]*\)/.test(right);
  if (!opened && right.includes(')')) return refuse('not-a-quantity', text, wanted);
  const head = opened ? left.slice(1) : left;
  const [tail, after] = opened ? (right.split(')', 2) as [string, string]) : [right, ''];
  const unitOfTail = NUMBER_THEN_UNIT.exec(tail.trim())?.[2]?.trim() ?? '';
  const headHasUnit = !/^[+-]?[\d.,\s]+$/.test(head);
  const shared = opened ? after.trim() : unitOfTail;
  const value = parseQuantity(headHasUnit ? head : `${head} ${shared}`, expected);
  if (isRefusal(value)) return { ...value, got: text };
  if (value.side !== undefined || value.u !== null) return refuse('not-a-quantity', text, wanted);
  const half = halfWidth(tail.trim(), value, opened ? after.trim() : unitOfTail);
  if (isRefusal(half)) return { ...half, got: text };
  if (half < 0) return refuse('negative', text, 'an uncertainty that is not negative');
  return { ...value, text, u: half / COVERAGE_OF_PLUS_MINUS };
}

/** The half width behind "±", in the SI unit of the value. A temperature's half width is a difference. */
function halfWidth(tail: string, value: Quantity, unitText: string): number | Refusal {
  if (unitText === '%' && value.kind === 'temperature')
    return refuse('not-a-quantity', tail, 'a half width in kelvin: a share of a temperature depends on where its scale begins');
  if (unitText === '%' && value.kind !== 'ratio') {
    const share = parseQuantity(tail, 'ratio');
    return isRefusal(share) ? share : share.value * Math.abs(value.value);
  }
  if (value.kind === 'temperature') {
    const number = parseNumber(NUMBER_THEN_UNIT.exec(tail)?.[1] ?? '');
    if (isRefusal(number)) return number;
    const unit = readingsOfUnit(unitText === '' ? 'K' : unitText).find((reading) => reading.unit.kind === 'temperature');
    return unit === undefined ? refuse('unknown-unit', tail, KIND_IN_WORDS.temperatureDifference) : number.value * unit.unit.factor;
  }
  const bare = /^[\d.,eE+-]+$/.test(tail) ? `${tail} ${unitText}` : tail;
  const half = parseQuantity(bare.trim(), value.kind);
  return isRefusal(half) ? half : half.value;
}

function parseConcise(text: string, match: RegExpExecArray, expected: Kind | undefined, wanted: string): Quantity | Refusal {
  const [, digits = '', inBrackets = '', unitText = ''] = match;
  const number = parseNumber(digits);
  if (isRefusal(number)) return { ...number, got: text };
  const value = inUnit(text, number, unitText.trim(), expected, wanted);
  return isRefusal(value) ? value : { ...value, u: Number(inBrackets) * value.lastDigit };
}
