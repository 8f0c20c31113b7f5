import { findRead } from '../bench/open-value.ts';
import type { Sweep, SweepRow } from './read-sweep.ts';
import type { Window } from './window-of.ts';

/** How an output behaves beyond its window. `soft`: more and more current while the voltage sinks, with no limit to it. */
export type LimitKind = 'constantCurrent' | 'constantPower' | 'foldback' | 'hiccup' | 'latchOff' | 'soft';

/** What it is and the figures that say so: what stays the same, and how far at most it is off its mean. */
export interface KindOfLimit {
  readonly kind: LimitKind;
  readonly figures: Readonly<Record<string, number>>;
}

const STEADY = 0.1; // share by which current or power may be off its mean and still count as constant; common practice
const TELLING = 0.2; // share of the mean by which the voltage must fall beyond the window before a shape can be told
const ALIVE = 0.1; // share of the nominal voltage above which an output still gives something
const LEAST_ROWS = 3;

/** Null where no row lies below the window; "unknown" where there are rows and they do not tell. */
export function kindOfLimit(sweep: Sweep, window: Window): KindOfLimit | 'unknown' | null {
  const below = sweep.rows.filter(({ voltage }) => voltage.side === undefined && voltage.value < window.least.value);
  if (below.length === 0) return null;
  const shape = shapeOf(
    sweep,
    below.filter(({ voltage }) => voltage.value >= ALIVE * window.nominal.value),
  );
  if (shape !== null) return shape;
  const end = findRead(sweep.exhibit.beyond);
  if (end === 'triesAgain') return { kind: 'hiccup', figures: {} };
  if (end === 'staysOff') return { kind: 'latchOff', figures: {} };
  return 'unknown';
}

function shapeOf(sweep: Sweep, rows: readonly SweepRow[]): KindOfLimit | null {
  if (rows.length < LEAST_ROWS) return null;
  const volts = rows.map(({ voltage }) => voltage.value);
  const amperes = rows.map(({ current }) => current.value);
  const watts = rows.map(({ voltage, current }) => voltage.value * current.value);
  if (Math.max(...volts) - Math.min(...volts) < TELLING * mean(volts)) return null;
  if (offMean(amperes) <= STEADY) return { kind: 'constantCurrent', figures: { current: mean(amperes), off: offMean(amperes) } };
  if (offMean(watts) <= STEADY) return { kind: 'constantPower', figures: { power: mean(watts), off: offMean(watts) } };
  const [lowest] = rows.toSorted((a, b) => a.voltage.value - b.voltage.value);
  const most = Math.max(...sweep.rows.map(({ current }) => current.value));
  if (lowest!.current.value < most * (1 - STEADY))
    return { kind: 'foldback', figures: { most, current: lowest!.current.value, voltage: lowest!.voltage.value } };
  return { kind: 'soft', figures: { current: lowest!.current.value, voltage: lowest!.voltage.value } };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Largest distance from the mean, as a share of it. */
function offMean(values: readonly number[]): number {
  const middle = mean(values);
  return middle === 0 ? Number.POSITIVE_INFINITY : Math.max(...values.map((value) => Math.abs(value - middle))) / Math.abs(middle);
}
