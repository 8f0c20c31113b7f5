import { bulkValley } from '../../formula/board/bulk-valley.ts';
import { conductionTime } from '../../formula/board/conduction-time.ts';
import { halfOfPower } from '../../formula/board/half-of-power.ts';
import { intervalBetweenCharges } from '../../formula/board/interval-between-charges.ts';
import { derive } from '../../formula/derive.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { cite } from '../../source/source.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { fieldOfCondition } from '../bench/conditions-of.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead } from '../bench/open-value.ts';
import type { Sweep } from '../load/read-sweep.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import { bulkCapacitance } from './bulk-capacitance.ts';
import { bulkFacts } from './bulk-facts.ts';
import { bestValue } from './part-quantity.ts';

export interface Valley {
  readonly valley: Derived;
  readonly conduction: Derived;
  readonly power: Derived;
  readonly mains: Derived;
  /** Of each of the two capacitors of a doubler. */
  readonly ofEach: boolean;
}

/** Periods of the mains between two charges of one capacitor; the two of a doubler take turns. There is no default. */
const PERIODS = { bridge: 0.5, singleDiode: 1, doubler: 1 } as const;

/**
 * How far the bulk voltage falls between two charges at the lowest mains at which a sweep read input power, at the greatest of those
 * powers. Null unless somebody said how the mains is rectified and the bulk capacitance is known.
 */
export function bulkValleyFacts(bench: Bench, levels: readonly LevelFacts[]): Valley | null {
  const kinds = exhibitsOf(bench, 'board').flatMap((board) => (board.struck === undefined ? (findRead(board.rectifier) ?? []) : []));
  const [kind] = kinds;
  if (kind === undefined || kinds.some((other) => other !== kind)) return null;
  const capacitance = kind === 'doubler' ? smallerOfTwo(bench) : bulkCapacitance(bench);
  const hardest = hardestRun(levels);
  if (capacitance === null || 'because' in capacitance || capacitance.value <= 0 || hardest === null) return null;
  const { sweep } = hardest;
  const under = (key: 'mains' | 'frequency', symbol: string): Derived | null => {
    const quantity = sweep[key];
    const field = fieldOfCondition(sweep.exhibit, key, `/exhibits/${sweep.exhibit.id}`, undefined);
    return quantity === null ? null : deriveReading(bench, quantity, { field, role: key, day: sweep.exhibit.day, symbol });
  };
  const [mains, frequency] = [under('mains', 'V'), under('frequency', 'f')];
  if (mains === null || frequency === null) return null;
  const share = given('constant', PERIODS[kind], '1', {
    id: `board/periods-between-charges/${kind}`,
    name: `rectifier-${kind}`,
    symbol: 's',
    source: cite('circuit-theory', 'rectifiers', 'reasoned'),
  });
  const at = `board/${sweep.exhibit.id}`;
  const crest = derive(peakOfMains, { rms: mains }, `${at}/crest`);
  const interval = derive(intervalBetweenCharges, { share, frequency }, `${at}/interval-between-charges`);
  const power = kind === 'doubler' ? derive(halfOfPower, { power: hardest.power }, `${at}/half-of-power`) : hardest.power;
  const valley = derive(bulkValley, { crest, power, capacitance, interval, frequency }, `${at}/bulk-valley`);
  return {
    valley,
    conduction: derive(conductionTime, { valley, crest, frequency }, `${at}/conduction-time`),
    power: hardest.power,
    mains,
    ofEach: kind === 'doubler',
  };
}

/** The smaller of the two capacitors of a doubler; null unless there are just two with a value. */
function smallerOfTwo(bench: Bench): Derived | null {
  const bulk = bulkFacts(bench);
  if (typeof bulk === 'string' || bulk.length !== 2) return null;
  const values = bulk.map(({ part }) => bestValue(bench, part, 'capacitance', 'capacitance', 'C').at).filter((at) => at !== null);
  return values.length === 2 ? (values.toSorted((a, b) => a.value - b.value)[0] ?? null) : null;
}

/** The greatest input power read in a sweep at the lowest mains. */
function hardestRun(levels: readonly LevelFacts[]): { sweep: Sweep; power: Derived } | null {
  const sweeps = levels
    .flatMap((level) => level.sweeps)
    .filter(
      ({ mains, frequency, rows }) =>
        (mains?.value ?? 0) > 0 && (frequency?.value ?? 0) > 0 && rows.some(({ inputPower }) => inputPower !== null),
    );
  const lowest = Math.min(...sweeps.map(({ mains }) => mains?.value ?? Number.POSITIVE_INFINITY));
  const runs = sweeps
    .filter(({ mains }) => mains?.value === lowest)
    .flatMap((sweep) => sweep.rows.flatMap(({ inputPower }) => (inputPower === null ? [] : [{ sweep, power: inputPower }])));
  return runs.toSorted((a, b) => b.power.value - a.power.value)[0] ?? null;
}
