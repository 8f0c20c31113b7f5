import type { ExhibitOf } from '../../evidence/case.ts';
import { derive } from '../../formula/derive.ts';
import { crestOfTest } from '../../formula/insulation/crest-of-test.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';

export interface ColdReading {
  readonly quantity: 'insulation' | 'resistance' | 'capacitance' | 'strength';
  readonly field: string;
  readonly opened: Opened<string>;
  readonly value: Derived | null;
  /** At which it was read; null for a plain ohmmeter or when nobody stated it. */
  readonly testVoltage: number | null;
  /** Of a strength test only; `value` is then its voltage, peak or d.c. */
  readonly strength?: { readonly outcome: 'held' | 'brokeDown'; readonly lasted: number | null };
}

/** From the mains to something that can be touched: "line~out-minus". */
export interface ColdPair {
  readonly id: string;
  readonly about: string;
  readonly mains: string;
  readonly other: string;
  /** Basic insulation is enough towards earth; null when nobody could say where the other conductor stands. */
  readonly insulation: 'reinforced' | 'basic' | null;
  readonly readings: readonly ColdReading[];
}

/** Every cold reading between the mains side and anything else, by pair. Readings within one side say nothing of the barrier. */
export function coldPairs(bench: Bench): ColdPair[] {
  const pairs = new Map<string, { mains: string; other: string; readings: ColdReading[] }>();
  for (const exhibit of exhibitsOf(bench, 'cold')) {
    const [mains, other] = fromMains(bench, exhibit.between);
    if (mains === null || other === null) continue;
    const id = `${mains}~${other}`;
    const pair = pairs.get(id) ?? { mains, other, readings: [] };
    pair.readings.push(readCold(bench, exhibit));
    pairs.set(id, pair);
  }
  return [...pairs.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, pair]) => ({
      id,
      about: `${nameOf(bench, pair.mains)} to ${nameOf(bench, pair.other)}`,
      insulation: insulationTowards(bench, pair.other),
      ...pair,
    }));
}

function fromMains(bench: Bench, [one, two]: readonly [string, string]): [string | null, string | null] {
  const side = (id: string): string | null => findRead(bench.conductors.get(id)?.side);
  if ((side(one) === 'mains') === (side(two) === 'mains')) return [null, null];
  return side(one) === 'mains' ? [one, two] : [two, one];
}

/** Whether a check reads it: across the barrier, or the capacitance between the pins that the discharge depends on. */
export function coldIsRead(bench: Bench, exhibit: ExhibitOf<'cold'>): boolean {
  const sides = exhibit.between.map((end) => findRead(bench.conductors.get(end)?.side));
  return fromMains(bench, exhibit.between)[0] !== null || (exhibit.quantity === 'capacitance' && sides.every((side) => side === 'mains'));
}

function insulationTowards(bench: Bench, id: string): ColdPair['insulation'] {
  const side = findRead(bench.conductors.get(id)?.side);
  return side === 'output' || side === 'touchable' ? 'reinforced' : side === 'earth' ? 'basic' : null;
}

function readCold(bench: Bench, exhibit: ExhibitOf<'cold'>): ColdReading {
  if (exhibit.quantity === 'strength') return readStrength(bench, exhibit);
  const opened: Opened<string> =
    exhibit.struck === undefined ? openValue<string>(exhibit.value) : { state: 'struck', because: exhibit.struck };
  const field = `/exhibits/${exhibit.id}/value`;
  const role = exhibit.quantity;
  const stated =
    exhibit.quantity === 'insulation' && exhibit.testVoltage !== undefined ? parseQuantity(exhibit.testVoltage, 'voltage') : null;
  const common = { quantity: role, field, opened, testVoltage: stated === null || isRefusal(stated) ? null : Math.abs(stated.value) };
  const quantity = opened.state === 'read' ? parseQuantity(opened.v, role === 'capacitance' ? 'capacitance' : 'resistance') : null;
  if (opened.state !== 'read' || quantity === null || isRefusal(quantity)) return { ...common, value: null };
  return {
    ...common,
    value: deriveReading(bench, quantity, {
      field,
      role,
      day: exhibit.day,
      instrument: opened.read.instrument,
      symbol: role === 'capacitance' ? 'C' : 'R',
    }),
  };
}

/** What was put across the insulation, as a peak: of an alternating voltage the crest, of a direct one itself. */
function readStrength(bench: Bench, exhibit: Extract<ExhibitOf<'cold'>, { quantity: 'strength' }>): ColdReading {
  const opened: Opened<string> =
    exhibit.struck === undefined ? openValue<string>(exhibit.value) : { state: 'struck', because: exhibit.struck };
  const field = `/exhibits/${exhibit.id}/value`;
  const lasted = exhibit.lasted === undefined ? null : parseQuantity(exhibit.lasted, 'time');
  const strength = { outcome: exhibit.outcome, lasted: lasted === null || isRefusal(lasted) ? null : lasted.value };
  const common = { quantity: 'strength', field, opened, testVoltage: null, strength } as const;
  const quantity = opened.state === 'read' ? parseQuantity(opened.v, 'voltage') : null;
  if (opened.state !== 'read' || quantity === null || isRefusal(quantity)) return { ...common, value: null };
  const read = deriveReading(
    bench,
    { ...quantity, value: Math.abs(quantity.value) },
    { field, role: 'testVoltage', day: exhibit.day, instrument: opened.read.instrument, symbol: 'U' },
  );
  return { ...common, value: exhibit.form === 'dc' ? read : derive(crestOfTest, { rms: read }, `cold/${exhibit.id}/crest`) };
}
