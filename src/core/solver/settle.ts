import { rowTimes } from './dense.ts';
import type { Topologies, Topology } from './topology.ts';
import type { Watch } from './watch.ts';

/** How far above zero a watch must stand to count, volts: above rounding, below anything that matters. House choice. */
export const FIRES_ABOVE = 1e-7;
/** Changes of region at one instant, worst first; then as many again, first in the list first, which cannot run in a circle as easily. */
const WORST_FIRST = 60;
const IN_ORDER = 200;

const value = (topology: Topology, x: Float64Array, n: number, watch: { row: number; sign: 1 | -1; offset: number }): number =>
  watch.sign * rowTimes(topology.rows, watch.row, x, n) + watch.offset;

/** How far a watch has fired, or nothing. */
export function firedBy(topology: Topology, x: Float64Array, n: number, watch: Watch): number {
  const first = value(topology, x, n, watch);
  if (first <= FIRES_ABOVE || watch.also === undefined) return first;
  return Math.min(first, value(topology, x, n, watch.also));
}

/** Changes regions one at a time until none wants to change; null when they do not come to rest. `regions` is changed in place. */
export function settle(
  topologies: Topologies,
  regions: Uint8Array,
  x: Float64Array,
  onChange: (device: number, to: number) => void,
): Topology | null {
  const n = topologies.plan.states.count;
  for (let turn = 0; turn < WORST_FIRST + IN_ORDER; turn += 1) {
    const topology = topologies.at(regions);
    let worst: Watch | null = null;
    let most = FIRES_ABOVE;
    for (const watch of topology.watches) {
      const by = firedBy(topology, x, n, watch);
      if (by <= most) continue;
      most = by;
      worst = watch;
      if (turn >= WORST_FIRST) break;
    }
    if (worst === null) return topology;
    regions[worst.device] = worst.to;
    onChange(worst.device, worst.to);
  }
  return null;
}
