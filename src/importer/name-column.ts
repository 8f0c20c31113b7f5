import { type Dimension, findUnit, type Unit } from './parse-unit.ts';

/** A heading taken apart: the name, and the unit where the heading states one beyond doubt. */
export interface Heading {
  readonly name: string;
  readonly unit: Unit | null;
}

/** Words (German and French ones too) that say which quantity a column holds. */
const QUANTITY_WORDS = new Map<string, Dimension[]>();
const LISTED: readonly (readonly [Dimension, string])[] = [
  ['voltage', 'voltage volt volts v u vout vin vdc vac vrms vpp vbus uin uout urms spannung tension'],
  ['current', 'current curr i iin iout irms idc iac amp amps strom courant'],
  ['power', 'power p pin pout watt watts leistung puissance'],
  ['time', 'time t elapsed timestamp zeit temps duration dauer uptime'],
  ['temperature', 'temp temperature t tc tamb ambient temperatur température'],
  ['frequency', 'frequency freq f frequenz'],
  ['resistance', 'resistance r rload widerstand'],
];
for (const [dimension, words] of LISTED) {
  for (const word of words.split(' ')) QUANTITY_WORDS.set(word, [...(QUANTITY_WORDS.get(word) ?? []), dimension]);
}

/** The quantities a name may speak of; empty when it says none. */
export function toQuantities(name: string): Set<Dimension> {
  const found = new Set<Dimension>();
  for (const token of name.toLowerCase().split(/[^\p{L}]+/u)) {
    for (const dimension of QUANTITY_WORDS.get(token) ?? []) found.add(dimension);
  }
  return found;
}

const OF_ANY_QUANTITY: readonly Dimension[] = ['ratio', 'level', 'number'];

/** Whether the unit can belong to what the name says: "Voltage (min)" is no time. */
export function fits(unit: Unit, name: string): boolean {
  const quantities = toQuantities(name);
  return quantities.size === 0 || quantities.has(unit.dimension) || OF_ANY_QUANTITY.includes(unit.dimension);
}

function says(name: string, dimension: Dimension): boolean {
  return toQuantities(name).has(dimension);
}

/** The unit of a text that stands where a unit is expected, next to the name it belongs to; null when that would be a guess. */
export function findUnitFor(text: string, name: string): Unit | null {
  if (/^\d*$/.test(text)) return null; // "(1)" numbers a channel
  if ((text === 'C' || text === 'F') && says(name, 'temperature')) return findUnit(`°${text}`);
  const unit = findUnit(text);
  if (unit === null || !fits(unit, name)) return null;
  // A farad, henry or kelvin, an hour or "min" also name a channel or a statistic: only where the name says so.
  if (/^(F|H|K|J|h|d|min|mins)$/i.test(text) && !says(name, unit.dimension)) return null;
  return unit;
}

const BRACKETED = /[([{]\s*([^()[\]{}]*?)\s*[)\]}]/g;
const CHANNEL_LETTERS = /[([]\s*[B-D]\s*[)\]]/;

const MANY_NAMES = 256; // beyond, comparing every name with every other takes too long: asked instead
const LONGEST_HEADING = 200; // characters; longer text is no name with a unit

/** `others` are the headings of the whole row: "(A)" beside "(B)" is a channel, not amperes. */
export function toHeading(raw: string, others: readonly string[]): Heading {
  const heading = raw.trim();
  const unknown: Heading = { name: heading, unit: null };
  if (heading.length > LONGEST_HEADING) return unknown;
  const inBrackets = findBracketed(heading, others);
  if (inBrackets === 'contradiction') return unknown;
  if (inBrackets !== null) return inBrackets;
  const comma = /^(.+?)\s*,\s*([^,]+)$/.exec(heading);
  const slash = /^([^/]+?)\s*\/\s*(\S+)$/.exec(heading);
  for (const split of [comma, slash]) {
    if (split === null) continue;
    const unit = findUnitFor(split[2]!, split[1]!);
    if (unit !== null && isSaidOrSafe(unit, split[2]!, split[1]!)) return { name: split[1]!, unit };
  }
  return findSuffix(heading, others) ?? findWholeName(heading) ?? unknown;
}

function findBracketed(heading: string, others: readonly string[]): Heading | 'contradiction' | null {
  let found: Heading | null = null;
  for (const match of heading.matchAll(BRACKETED)) {
    const stem = (heading.slice(0, match.index) + heading.slice(match.index + match[0].length)).replace(/\s+/g, ' ').trim();
    const inside = match[1]!;
    if (inside === 'A' && !says(stem, 'current') && (others.length > MANY_NAMES || others.some((other) => CHANNEL_LETTERS.test(other))))
      continue;
    // "Sample(s)" is a plural.
    if (inside === 's' && !says(stem, 'time') && /\p{L}\(s\)$/u.test(heading)) continue;
    const unit = findUnitFor(inside, stem);
    if (unit === null) continue;
    if (found !== null) return 'contradiction';
    found = { name: unit.said === '' && stem !== '' ? stem : heading, unit };
  }
  return found;
}

/** A unit behind a slash or comma: safe when it has a prefix or several letters, or when the name says the quantity. */
function isSaidOrSafe(unit: Unit, text: string, name: string): boolean {
  return says(name, unit.dimension) || (text.length > 1 && !/^\p{Lu}{2}$/u.test(text));
}

/** "V_out_V", "Current mA": only where the rest of the name speaks of that very quantity, and no sibling shows a row of channels. */
function findSuffix(heading: string, others: readonly string[]): Heading | null {
  const parts = /^(.*[\p{L}\d)])[_ ]+([^\s_]+)$/u.exec(heading) ?? /^(.*\S)\s+(deg(?:rees)? [CF])$/i.exec(heading);
  if (parts === null || others.length > MANY_NAMES) return null;
  const stem = parts[1]!;
  const suffix = parts[2]!;
  if (/^(min|mins|sample|samples|point|points|index|count|counts|sequence|deg|\d+)$/i.test(suffix)) return null;
  const unit = findUnitFor(suffix, stem);
  if (unit === null || unit.said !== '') return null;
  if (!says(stem, unit.dimension))
    return suffix.length > 1 && unit.power !== 0 && toQuantities(stem).size === 0 ? { name: stem, unit } : null;
  if (suffix.length === 1 && others.filter((other) => other.startsWith(stem) && /^[_ ]\p{L}$/u.test(other.slice(stem.length))).length > 1)
    return null;
  const isChannel = (other: string) => {
    const letter = /^(.*)[_ ]([A-D])$/.exec(other);
    return letter !== null && other !== heading && (letter[2] !== suffix || !says(letter[1]!, unit.dimension));
  };
  if (/^[A-D]$/.test(suffix) && others.some(isChannel)) return null;
  return { name: stem, unit };
}

const SHORTEST_WORD = 4; // letters: "Volt" is a unit as a heading, "V" may be the sign of the quantity

function findWholeName(heading: string): Heading | null {
  const unit = findUnit(heading);
  if (unit === null || unit.dimension === 'number' || unit.said !== '') return null;
  const isWord = heading.length >= SHORTEST_WORD && /^\p{L}+$/u.test(heading);
  const hasPrefix = unit.power !== 0 && heading.length > 1;
  return isWord || hasPrefix || unit.symbol.startsWith('°') ? { name: heading, unit } : null;
}

const COUNTING =
  /^(index|idx|no\.?|nr\.?|num(ber)?|#|samples?|points?|records?|rec|seq(uence)?|steps?|cycles?|counts?|rows?|scan|reading)( ?(#|no\.?|nr\.?|number|index))?$/i;
const RATIO = /^(pf|power ?factor|cos ?(φ|phi)|crest ?factor|cf)[ _-]?\d*$/i;

/** Whether a column of this name counts rows, samples or steps (and so has no unit), if its values are whole numbers. */
export function isCountingName(name: string): boolean {
  return COUNTING.test(name);
}

export function isRatioName(name: string): boolean {
  return RATIO.test(name);
}
