import { derive } from '../../formula/derive.ts';
import { currentAtVoltage } from '../../formula/load/current-at-voltage.ts';
import { combine } from '../../trace/combine.ts';
import { type Derived, doubtOf, given, withNotes } from '../../trace/derived.ts';
import { uncertaintyOf } from '../../trace/leaf.ts';
import type { Note } from '../../trace/step.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import { normalBelow } from '../../uncertainty/normal.ts';
import type { Sweep, SweepRow } from './read-sweep.ts';
import type { Window } from './window-of.ts';

/**
 * Current that a sweep holds inside the window: from the first row inside up to the crossing of an edge, by a straight line between the two
 * rows around it. What the curve may do between them is a leaf of doubt: the distance between the line and the parabolas through a third row,
 * or the whole gap where the voltage falls off a cliff. Never extrapolated: a sweep that never leaves the window gives "above the last row".
 */
export function heldCurrent(sweep: Sweep, window: Window): Derived | null {
  // a row at a current already passed says nothing new of how far the unit goes
  const rows = sweep.rising;
  const id = `load/${sweep.exhibit.id}/held-current`;
  if (rows.length === 0) return null;
  const inside = ({ voltage }: SweepRow): boolean => voltage.value >= window.least.value && voltage.value <= window.most.value;
  const first = rows.findIndex(inside);
  if (first < 0) {
    const perhaps = rows.filter((row) => chanceInside(row, window) > UNLIKELY).map(({ current }) => current.value);
    const never = given('constant', 0, 'A', { id, name: 'neverInside', symbol: 'I_h', notes: [{ key: 'neverInside', args: {} }] });
    return perhaps.length === 0 ? never : { ...never, alternatives: [Math.max(...perhaps)] };
  }
  const after = rows.findIndex((row, index) => index > first && !inside(row));
  if (after < 0) {
    // a row that may as well lie outside takes the certainty from everything behind it
    const doubtful = rows.findIndex((row, index) => index >= first && chanceInside(row, window) < LIKELY);
    const last = sweep.gaveWay ? takenBack(rows, rows.length, id, sweep.exhibit.id) : atLast(rows.at(-1)!.current, id);
    return doubtful < 0 ? last : { ...last, alternatives: [doubtful === 0 ? 0 : rows[doubtful - 1]!.current.value] };
  }
  const before = rows[after - 1]!;
  const out = rows[after]!;
  if (out.current.value <= before.current.value) return takenBack(rows, after, id, sweep.exhibit.id);
  const edge = out.voltage.value < window.least.value ? window.least : window.most;
  const between = betweenRows(rows, after, edge.value, window, sweep.exhibit.id);
  return derive(
    currentAtVoltage,
    { currentBefore: before.current, currentAfter: out.current, voltageBefore: before.voltage, voltageAfter: out.voltage, edge, between },
    id,
  );
}

/**
 * The unit gave way at a current that was asked for but not read: the knee lies within one step of the sweep above the last row inside.
 */
function takenBack(rows: readonly SweepRow[], after: number, id: string, exhibit: string): Derived {
  const { current } = rows[after - 1]!;
  const step = current.value - (rows[after - 2]?.current.value ?? 0);
  const half = Math.max(0, step) / 2;
  const between = given(
    'constant',
    half,
    'A',
    { id: `load/${exhibit}/between-rows`, name: 'betweenRows', symbol: 'δ' },
    { form: doubtOf({ id: `between/${exhibit}`, u: rectangular(half), means: 'betweenRows' }) },
  );
  return combine(
    {
      kind: 'reduce',
      unit: 'A',
      formula: null,
      symbols: { current: 'I', between: 'δ' },
      moves: { current: 'up', between: 'up' },
      compute: (plain) => plain.current + plain.between,
    },
    { current, between },
    { id, name: 'takenBack', symbol: 'I_h', notes: [{ key: 'takenBack', args: {} }] },
  );
}

const LIKELY = 0.95; // docs/decisions/0003-verdict.md
const UNLIKELY = 0.05;

/** Probability that a row's voltage lies inside the window; with unknown uncertainty, by its value alone. */
function chanceInside({ voltage }: SweepRow, window: Window): number {
  const u = voltage.side === undefined ? uncertaintyOf(voltage.form) : null;
  const inside = voltage.value >= window.least.value && voltage.value <= window.most.value;
  if (voltage.side !== undefined) return inside ? (LIKELY + UNLIKELY) / 2 : UNLIKELY;
  if (u === null || u === 0) return inside ? 1 : 0;
  return normalBelow((window.most.value - voltage.value) / u) - normalBelow((window.least.value - voltage.value) / u);
}

function atLast(last: Derived, id: string): Derived {
  const notes: Note[] = [{ key: 'neverLeft', args: {} }];
  const step = {
    ...last.step,
    id,
    kind: 'reduce' as const,
    name: 'lastCurrent',
    symbol: 'I_h',
    side: 'above' as const,
    u: null,
    uses: [{ node: last.step, symbol: 'I', sensitivity: 1 }],
    notes,
  };
  const { field: _field, ...bare } = step;
  return { ...last, side: 'above', step: bare };
}

/** Zero where the curve is smooth; where it falls by more than the window, the middle of the gap. */
function betweenRows(rows: readonly SweepRow[], after: number, edge: number, window: Window, exhibit: string): Derived {
  const a = point(rows[after - 1]!);
  const b = point(rows[after]!);
  const line = a.i + ((edge - a.v) * (b.i - a.i)) / (b.v - a.v);
  const gap = b.i - a.i;
  const cliff = Math.abs(a.v - b.v) > window.most.value - window.least.value;
  const thirds = [rows[after - 2], rows[after + 1]].filter((row) => row !== undefined).map(point);
  const bend =
    cliff || thirds.length === 0
      ? gap / 2
      : Math.min(gap / 2, Math.max(...thirds.map((c) => Math.abs(inverseParabola(edge, a, b, c) - line))));
  const middle = cliff ? (a.i + b.i) / 2 - line : 0;
  return withNotes(
    given(
      'constant',
      middle,
      'A',
      { id: `load/${exhibit}/between-rows`, name: 'betweenRows', symbol: 'δ' },
      { form: doubtOf({ id: `between/${exhibit}`, u: rectangular(Number.isFinite(bend) ? bend : gap / 2), means: 'betweenRows' }) },
    ),
    cliff ? [{ key: 'cliff', args: { fromA: a.i, toA: b.i } }] : [],
  );
}

function point(row: SweepRow): { i: number; v: number } {
  return { i: row.current.value, v: row.voltage.value };
}

/** Current at a voltage by the parabola through three points, current as a function of voltage (Lagrange). */
function inverseParabola(v: number, ...points: readonly { i: number; v: number }[]): number {
  return points.reduce((sum, p, k) => {
    const weight = points.reduce((product, q, m) => (m === k ? product : (product * (v - q.v)) / (p.v - q.v)), 1);
    return sum + p.i * weight;
  }, 0);
}
