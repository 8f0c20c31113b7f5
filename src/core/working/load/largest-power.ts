import { derive } from '../../formula/derive.ts';
import { power } from '../../formula/load/power.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { heldCurrent } from './held-current.ts';
import type { Sweep } from './read-sweep.ts';
import type { Window } from './window-of.ts';

/**
 * The largest V·I that a sweep holds inside the window: of its rows, and of the place where it leaves the window. A sweep that never leaves it
 * gives "above the largest".
 */
export function largestPower(sweep: Sweep, window: Window): Derived | null {
  const held = heldCurrent(sweep, window);
  if (held === null) return null;
  const id = `load/${sweep.exhibit.id}/largest-power`;
  const inside = sweep.rising.filter(
    ({ voltage, current }) => voltage.value >= window.least.value && voltage.value <= window.most.value && current.value <= held.value,
  );
  const rows = inside.map((row) =>
    derive(power, { voltage: row.voltage, current: row.current }, `load/${sweep.exhibit.id}/${row.id}/power`),
  );
  const largest = rows.toSorted((a, b) => b.value - a.value)[0];
  if (largest === undefined)
    return given('constant', 0, 'W', { id, name: 'neverInside', symbol: 'P', notes: [{ key: 'neverInside', args: {} }] });
  if (held.side !== undefined) return bound(largest, held, id);
  const leaves = lowerEdgeLeft(sweep, window, held)
    ? derive(power, { voltage: window.least, current: held }, `load/${sweep.exhibit.id}/power-at-edge`)
    : null;
  return leaves !== null && leaves.value > largest.value ? leaves : largest;
}

/** The window is left by its lower edge: beyond the current held the voltage lies below. */
function lowerEdgeLeft(sweep: Sweep, window: Window, held: Derived): boolean {
  const next = sweep.rising.find(({ current }) => current.value > held.value);
  return next !== undefined && next.voltage.value < window.least.value;
}

/** At least this much; where the current held may be less on another branch, so may the power. */
function bound(largest: Derived, held: Derived, id: string): Derived {
  const { field: _field, ...step } = largest.step;
  return {
    ...largest,
    side: 'above',
    alternatives: held.value > 0 ? held.alternatives.map((other) => (largest.value * other) / held.value) : [],
    step: {
      ...step,
      id,
      kind: 'reduce',
      name: 'largestPower',
      symbol: 'P',
      side: 'above',
      u: null,
      formula: null,
      uses: [{ node: largest.step, symbol: 'P', sensitivity: 1 }],
      notes: [{ key: 'neverLeft', args: {} }],
    },
  };
}
