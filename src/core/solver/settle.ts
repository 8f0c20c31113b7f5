import type { Topologies, Topology } from './topology.ts';
import { fired } from './watch-table.ts';

/** Changes of region at one instant, worst first; then as many again, first in the list first, which cannot run in a circle as easily. */
const WORST_FIRST = 60;
const IN_ORDER = 200;

/**
 * Changes regions one at a time until none wants to change; null when they do not come to rest. `regions` is changed in place; `look` puts
 * what is looked at in a topology into `values`, where the last look stays.
 */
export function settle(
  topologies: Topologies,
  from: Topology,
  regions: Uint8Array,
  values: Float64Array,
  look: (topology: Topology) => void,
  onChange: (device: number, to: number) => void,
): Topology | null {
  let topology = from;
  for (let turn = 0; turn < WORST_FIRST + IN_ORDER; turn += 1) {
    look(topology);
    const worst = fired(topology.table, values, turn >= WORST_FIRST);
    if (worst < 0) return topology;
    const { device, to } = topology.watches[worst]!;
    regions[device] = to;
    onChange(device, to);
    topology = topologies.after(topology, device, to, regions);
  }
  return null;
}
