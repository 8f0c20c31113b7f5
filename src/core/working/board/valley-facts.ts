import { bulkValley } from '../../formula/board/bulk-valley.ts';
import { conductionTime } from '../../formula/board/conduction-time.ts';
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

export interface Valley {
  readonly valley: Derived;
  readonly conduction: Derived;
  readonly power: Derived;
  readonly mains: Derived;
}

/** Periods of the mains between two charges. A doubler has two capacitors that take turns and is not worked out; there is no default. */
const PERIODS = { bridge: 0.5, singleDiode: 1 } as const;

/**
 * How far the bulk voltage falls between two charges at the lowest mains at which a sweep read input power, at the greatest of those
 * powers. Null unless somebody said how the mains is rectified and the bulk capacitance is known.
 */
export function bulkValleyFacts(bench: Bench, levels: readonly LevelFacts[]): Valley | null {
  const kinds = exhibitsOf(bench, 'board').flatMap((board) => (board.struck === undefined ? (findRead(board.rectifier) ?? []) : []));
  const [kind] = kinds;
  if (kind === undefined || kind === 'doubler' || kinds.some((other) => other !== kind)) return null;
  const capacitance = bulkCapacitance(bench);
  const hardest = hardestRun(levels);
  if ('because' in capacitance || hardest === null) return null;
  const { sweep, power } = hardest;
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
  const valley = derive(bulkValley, { crest, power, capacitance, interval, frequency }, `${at}/bulk-valley`);
  return { valley, conduction: derive(conductionTime, { valley, crest, frequency }, `${at}/conduction-time`), power, mains };
}

/** The greatest input power read in a sweep at the lowest mains. */
function hardestRun(levels: readonly LevelFacts[]): { sweep: Sweep; power: Derived } | null {
  const sweeps = levels
    .flatMap((level) => level.sweeps)
    .filter(({ mains, frequency, rows }) => mains !== null && frequency !== null && rows.some(({ inputPower }) => inputPower !== null));
  const lowest = Math.min(...sweeps.map(({ mains }) => mains?.value ?? Number.POSITIVE_INFINITY));
  const runs = sweeps
    .filter(({ mains }) => mains?.value === lowest)
    .flatMap((sweep) => sweep.rows.flatMap(({ inputPower }) => (inputPower === null ? [] : [{ sweep, power: inputPower }])));
  return runs.toSorted((a, b) => b.power.value - a.power.value)[0] ?? null;
}
