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
import { withMainsDoubt } from '../bench/mains-frequency-doubt.ts';
import { findRead } from '../bench/open-value.ts';
import type { Sweep } from '../load/read-sweep.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import { bulkCapacitance } from './bulk-capacitance.ts';
import { bulkFacts } from './bulk-facts.ts';
import { bestValue } from './part-quantity.ts';

export interface Valley {
  readonly valley: Derived;
  readonly conduction: Derived;
  /** All of what goes in. */
  readonly power: Derived;
  /** What this capacitor gives of it: half behind a doubler. */
  readonly drawn: Derived;
  readonly capacitance: Derived;
  readonly mains: Derived;
  readonly exhibit: string;
  /** Of each of the two capacitors of a doubler. */
  readonly ofEach: boolean;
}

/** Periods of the mains between two charges of one capacitor; the two of a doubler take turns. There is no default. */
const PERIODS = { bridge: 0.5, singleDiode: 1, doubler: 1 } as const;
type Rectifier = keyof typeof PERIODS;

/**
 * How far the bulk voltage falls between two charges at each mains voltage at which a sweep read input power, lowest first, at the greatest
 * of those powers at which the output still stood inside its window. Empty unless somebody said how the mains is rectified and the bulk
 * capacitance is known.
 */
export function bulkValleys(bench: Bench, levels: readonly LevelFacts[]): Valley[] {
  const kinds = exhibitsOf(bench, 'board').flatMap((board) => (board.struck === undefined ? (findRead(board.rectifier) ?? []) : []));
  const [kind] = kinds;
  if (kind === undefined || kinds.some((other) => other !== kind)) return [];
  const capacitance = kind === 'doubler' ? smallerOfTwo(bench) : bulkCapacitance(bench);
  if (capacitance === null || 'because' in capacitance || capacitance.value <= 0) return [];
  return hardestRuns(levels).flatMap((run) => valleyOf(bench, kind, capacitance, run) ?? []);
}

function valleyOf(bench: Bench, kind: Rectifier, capacitance: Derived, { sweep, power }: HardestRun): Valley | null {
  const under = (key: 'mains' | 'frequency', symbol: string): Derived | null => {
    const quantity = sweep[key];
    const field = fieldOfCondition(sweep.exhibit, key, `/exhibits/${sweep.exhibit.id}`, undefined);
    const doubted = quantity !== null && key === 'frequency' ? withMainsDoubt(quantity) : quantity;
    return doubted === null ? null : deriveReading(bench, doubted, { field, role: key, day: sweep.exhibit.day, symbol });
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
  const drawn = kind === 'doubler' ? derive(halfOfPower, { power }, `${at}/half-of-power`) : power;
  const valley = derive(bulkValley, { crest, power: drawn, capacitance, interval, frequency }, `${at}/bulk-valley`);
  const conduction = derive(conductionTime, { valley, crest, frequency }, `${at}/conduction-time`);
  return { valley, conduction, power, drawn, capacitance, mains, exhibit: sweep.exhibit.id, ofEach: kind === 'doubler' };
}

/** The smaller of the two capacitors of a doubler; null unless there are just two with a value. */
function smallerOfTwo(bench: Bench): Derived | null {
  const bulk = bulkFacts(bench);
  if (typeof bulk === 'string' || bulk.length !== 2) return null;
  const values = bulk.map(({ part }) => bestValue(bench, part, 'capacitance', 'capacitance', 'C').at).filter((at) => at !== null);
  return values.length === 2 ? (values.toSorted((a, b) => a.value - b.value)[0] ?? null) : null;
}

const LOW_VOLTAGE_V = 1000; // where low voltage ends (IEC 60038); a mains above it is a slip of the pen

interface HardestRun {
  readonly sweep: Sweep;
  readonly power: Derived;
}

/** For each mains voltage, lowest first, the greatest input power at which a sweep there still held its window. */
function hardestRuns(levels: readonly LevelFacts[]): HardestRun[] {
  const hardest = new Map<number, HardestRun>();
  for (const { window, sweeps } of levels) {
    if (window === null) continue;
    for (const sweep of sweeps) {
      const mains = sweep.mains?.value ?? 0;
      if (mains <= 0 || mains > LOW_VOLTAGE_V || (sweep.frequency?.value ?? 0) <= 0) continue;
      for (const { voltage, inputPower } of sweep.rows) {
        const held = voltage.value >= window.least.value && voltage.value <= window.most.value;
        if (!held || inputPower === null || inputPower.value <= 0) continue;
        if (inputPower.value > (hardest.get(mains)?.power.value ?? 0)) hardest.set(mains, { sweep, power: inputPower });
      }
    }
  }
  return [...hardest].toSorted(([a], [b]) => a - b).map(([, run]) => run);
}
