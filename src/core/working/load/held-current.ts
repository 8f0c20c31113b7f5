import { derive } from '../../formula/derive.ts';
import { currentAtVoltage } from '../../formula/load/current-at-voltage.ts';
import { type Derived, doubtOf, given, withNotes } from '../../trace/derived.ts';
import type { Note } from '../../trace/step.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import type { Sweep, SweepRow } from './read-sweep.ts';
import type { Window } from './window-of.ts';

/**
 * Current that a sweep holds inside the window: from the first row inside up to the crossing of an edge, by a straight line between the two
 * rows around it. What the curve may do between them is a leaf of doubt: the distance between the line and the parabolas through a third row,
 * or the whole gap where the voltage falls off a cliff. Never extrapolated: a sweep that never leaves the window gives "above the last row".
 */
export function heldCurrent(sweep: Sweep, window: Window): Derived | null {
  const { rows } = sweep;
  const inside = (row: SweepRow): boolean => row.voltage.value >= window.least.value && row.voltage.value <= window.most.value;
  const first = rows.findIndex(inside);
  const id = `load/${sweep.exhibit.id}/held-current`;
  if (rows.length === 0) return null;
  if (first < 0) return given('constant', 0, 'A', { id, name: 'neverInside', symbol: 'I_h', notes: [{ key: 'neverInside', args: {} }] });
  const after = rows.findIndex((row, index) => index > first && !inside(row));
  if (after < 0) {
    const last = rows.at(-1)!.current;
    return atLast(last, id);
  }
  const before = rows[after - 1]!;
  const out = rows[after]!;
  const edge = out.voltage.value < window.least.value ? window.least : window.most;
  const between = betweenRows(rows, after, edge.value, window, sweep.exhibit.id);
  return derive(
    currentAtVoltage,
    { currentBefore: before.current, currentAfter: out.current, voltageBefore: before.voltage, voltageAfter: out.voltage, edge, between },
    id,
  );
}

function atLast(last: Derived, id: string): Derived {
  const notes: Note[] = [{ key: 'neverLeft', args: {} }];
  const step = { ...last.step, id, kind: 'reduce' as const, name: 'lastCurrent', symbol: 'I_h', side: 'above' as const, u: null, uses: [{ node: last.step, symbol: 'I', sensitivity: 1 }], notes };
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
  const bend = cliff || thirds.length === 0 ? gap / 2 : Math.min(gap / 2, Math.max(...thirds.map((c) => Math.abs(inverseParabola(edge, a, b, c) - line))));
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
