import { derive } from '../../formula/derive.ts';
import { averageOfFour } from '../../formula/load/average-of-four.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { cite } from '../../source/source.ts';
import { combine } from '../../trace/combine.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { efficiencyAtPoint, LOAD_POINTS, POINTS, type Point } from './efficiency-at.ts';
import { heldCurrent } from './held-current.ts';
import type { Sweep } from './read-sweep.ts';
import type { LevelFacts } from './sweep-facts.ts';

/** 10 CFR 430 subpart B appendix Z: the one test voltage and frequency, each within 1 %. */
const MAINS_V = 115;
const FREQUENCY_HZ = 60;
const WITHIN = 0.01;
const PD_CURRENT_A = 2; // a negotiating supply is tested at its lowest voltage up to this current a port

export interface LevelSix {
  readonly exhibit: string;
  readonly nominal: Derived;
  /** Full load of the test: the printed current, or 2 A at the lowest voltage of a negotiating supply. */
  readonly current: Derived;
  readonly average: Derived;
  /** Load points in the average; those that cannot be held are dropped. */
  readonly points: number;
}

/** The American average of one level; null where no run was taken as appendix Z says, or where the level is not the one that is tested. */
export function levelSix(level: LevelFacts): LevelSix | null {
  const current = testCurrent(level);
  const run = level.sweeps.find(({ mains, frequency }) => near(mains?.value, MAINS_V) && near(frequency?.value, FREQUENCY_HZ));
  if (level.window === null || current === null || current.value <= 0 || run === undefined) return null;
  const held = heldCurrent(run, level.window);
  const found = new Map<Point, Derived>();
  for (const point of LOAD_POINTS) {
    const one = efficiencyAtPoint(run, current, point, `load/${run.exhibit.id}/level-six-${point}`);
    const dropped = held !== null && held.side === undefined && held.value < current.value * POINTS[point];
    if (dropped) continue;
    if (one === null) return null; // not held, or only not tried: a sweep that stops early drops nothing
    found.set(point, one);
  }
  const average = averageOf(run, found);
  return average === null ? null : { exhibit: run.exhibit.id, nominal: level.window.nominal, current, average, points: found.size };
}

function testCurrent(level: LevelFacts): Derived | null {
  const { levels } = level.port;
  if (levels.length === 1) return level.claim;
  const lowest = levels.toSorted((a, b) => volts(a.voltage) - volts(b.voltage))[0];
  if (lowest?.id !== level.level.id) return null;
  const source = cite('us-10cfr430', 'subpart B, appendix Z: supplies that negotiate', 'secondary', {
    alsoBy: ['a copy of the federal regulations'],
  });
  return given('constant', PD_CURRENT_A, 'A', { id: 'load/level-six-current', name: 'levelSixCurrent', symbol: 'I_c', source });
}

function averageOf(run: Sweep, found: ReadonlyMap<Point, Derived>): Derived | null {
  const id = `load/${run.exhibit.id}/level-six-average`;
  if (found.size === 0) return null;
  if (found.size === LOAD_POINTS.length) return derive(averageOfFour, Object.fromEntries(found) as Record<Point, Derived>, id);
  const named = Object.fromEntries(found) as Record<Point, Derived>;
  const keys = [...found.keys()];
  const symbols = Object.fromEntries(keys.map((key) => [key, `η_${POINTS[key] * 100}`])) as Record<Point, string>;
  const moves = Object.fromEntries(keys.map((key) => [key, 'up' as const])) as Record<Point, 'up'>;
  const compute = (plain: Readonly<Record<Point, number>>): number => keys.reduce((sum, key) => sum + plain[key], 0) / keys.length;
  return combine({ kind: 'reduce', unit: '1', formula: null, symbols, moves, compute }, named, {
    id,
    name: 'averageOfHeld',
    symbol: 'η_m',
    show: 'percent',
  });
}

function near(value: number | undefined, wanted: number): boolean {
  return value !== undefined && Math.abs(value - wanted) <= WITHIN * wanted;
}

function volts(text: string): number {
  const read = parseQuantity(text, 'voltage');
  return isRefusal(read) ? Number.POSITIVE_INFINITY : read.value;
}
