import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal, type Refusal, refuse } from '../../quantity/refusal.ts';
import { KIND_IN_WORDS, type Kind } from '../../quantity/unit.ts';
import { CAPACITORS, type CircuitKind } from '../circuit.ts';
import type { TracedPart } from './traced.ts';

/** What the value of a part of that kind is measured in; kinds left out have no value of their own. */
export const VALUE_KIND: Partial<Readonly<Record<CircuitKind, Kind>>> = {
  resistor: 'resistance',
  fusibleResistor: 'resistance',
  ntc: 'resistance',
  ceramicCapacitor: 'capacitance',
  filmCapacitor: 'capacitance',
  electrolyticCapacitor: 'capacitance',
  capacitor: 'capacitance',
  inductor: 'inductance',
  commonModeChoke: 'inductance',
  zener: 'voltage',
  load: 'resistance',
};
const RATINGS = { voltage: 'voltage', current: 'current', power: 'power' } as const satisfies Record<string, Kind>;
const PART_VALUES: ReadonlySet<Kind> = new Set(['resistance', 'capacitance', 'inductance']);
/** Their type numbers end like ratings: "431A" is no current. */
const WITHOUT_RATINGS: ReadonlySet<CircuitKind | null> = new Set(['controller', 'shuntReference', 'optocoupler', 'negotiationChip']);
const TYPE_NUMBER = /^\d{3,}[A-Z]$/;
const SAFETY_CLASS = /^(?:X[123]|Y[1234])$/;
const SHARE = /^±?\d+(?:[.,]\d+)?%$/;

export type Words = Pick<TracedPart, 'value' | 'voltage' | 'current' | 'power' | 'tolerance' | 'safetyClass' | 'marking'>;

/** Sorts the words before the colon: value, ratings, class, tolerance, and what is left is the marking. A value of another dimension is refused. */
export function readWords(kind: CircuitKind | null, words: readonly string[]): Words | Refusal {
  const found: { -readonly [K in keyof Words]: Words[K] } = {
    value: null,
    voltage: null,
    current: null,
    power: null,
    tolerance: null,
    safetyClass: null,
    marking: null,
  };
  const valueKind = kind === null ? undefined : VALUE_KIND[kind];
  const marking: string[] = [];
  for (const word of joinUnits(words)) {
    const slot = slotOf(word, kind, valueKind, found.value !== null);
    if (isRefusal(slot)) return slot;
    if (slot === 'marking') marking.push(word);
    else if (found[slot] !== null) return refuse('said-twice', word, `one ${slot} for a part`);
    else found[slot] = word;
  }
  if (marking.length > 0) found.marking = marking.join(' ');
  return found;
}

const NUMBER = /^±?\d+(?:[.,]\d+)?$/;
const UNIT = /^(?:%|[pnuµμmkKMG]?(?:F|H|Ω|V|A|W|[Oo]hms?))$/;

/** "2.2 nF" is one word. */
function joinUnits(words: readonly string[]): string[] {
  const joined: string[] = [];
  for (const word of words) {
    const before = joined.at(-1);
    if (before !== undefined && UNIT.test(word) && NUMBER.test(before)) joined[joined.length - 1] = before + word;
    else joined.push(word);
  }
  return joined;
}

function slotOf(word: string, kind: CircuitKind | null, valueKind: Kind | undefined, hasValue: boolean): keyof Words | Refusal {
  if (word === '?') return 'value';
  if (CAPACITORS.has(kind) && SAFETY_CLASS.test(word)) return 'safetyClass';
  if (SHARE.test(word)) return 'tolerance';
  if (valueKind !== undefined && !isRefusal(parseQuantity(word, valueKind)) && !(hasValue && valueKind === 'voltage')) return 'value';
  if (WITHOUT_RATINGS.has(kind) && TYPE_NUMBER.test(word)) return 'marking';
  for (const [slot, of] of Object.entries(RATINGS)) if (!isRefusal(parseQuantity(word, of))) return slot as keyof typeof RATINGS;
  const other = parseQuantity(word);
  if (valueKind !== undefined && !isRefusal(other) && PART_VALUES.has(other.kind))
    return refuse('wrong-dimension', word, KIND_IN_WORDS[valueKind]);
  return 'marking';
}
