import { type IncrementChain, startChain } from './increment-matrix.ts';
import {
  addRow,
  buildNetwork,
  ceilingRow,
  driveRow,
  magnetisingRow,
  motion,
  type Network,
  type Row,
  senseRow,
  unit,
  voltageRow,
} from './network.ts';
import type { Plan, Sense } from './plan.ts';
import { powerOfTwo } from './power-of-two.ts';
import { keyOf, type RegionTable } from './regions.ts';
import { layRows, type RowLayout, type Watch, watchesOf } from './watch.ts';

/** Smallest step, 2^-31 s = 0.47 ns: times are whole numbers of it. */
export const TICK_LEVEL = -31;
export const TICK_S = powerOfTwo(TICK_LEVEL);

/** All that is known of the circuit while no part changes its region. */
export interface Topology {
  readonly network: Network;
  readonly chain: IncrementChain;
  /** Watched rows, and their rates of change, over the states. */
  readonly rows: Float64Array;
  readonly rates: Float64Array;
  readonly watches: readonly Watch[];
  /** Sums of x xᵀ over the steps taken, by level above the tick (energy-balance.ts). */
  readonly moments: (Float64Array | undefined)[];
}

/** Builds each topology once and keeps it. */
export class Topologies {
  readonly plan: Plan;
  readonly table: RegionTable;
  readonly layout: RowLayout;
  readonly known = new Map<string, Topology>();
  readonly #senses: readonly Sense[];
  readonly #probes: readonly ((network: Network) => Row)[];

  constructor(plan: Plan, table: RegionTable, senses: readonly Sense[], probes: readonly ((network: Network) => Row)[]) {
    this.plan = plan;
    this.table = table;
    this.#senses = senses;
    this.#probes = probes;
    this.layout = layRows(plan, table, senses.length + probes.length);
  }

  at(regions: Uint8Array): Topology {
    const key = keyOf(regions);
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const built = this.#build(regions);
    this.known.set(key, built);
    return built;
  }

  #build(regions: Uint8Array): Topology {
    const { plan, table, layout } = this;
    const network = buildNetwork(plan, table, regions);
    const n = plan.states.count;
    const rows = new Float64Array(layout.count * n);
    const set = (at: number, row: Row): void => {
      if (at >= 0) rows.set(row, at * n);
    };
    plan.bends.forEach(({ a, b }, index) => {
      set(layout.bend[index]!, voltageRow(network, a, b));
    });
    plan.limited.forEach(({ ohms }, index) => {
      // as volts across the saturation resistance, so that one tolerance fits all rows
      const drive = driveRow(network, index).map((value) => value * ohms);
      const ceiling = ceilingRow(network, index).map((value) => value * ohms);
      set(layout.limited[index]!, drive);
      set(layout.limited[index]! + 1, ceiling);
      set(layout.limited[index]! + 2, addRow(drive.slice(), ceiling, -1));
    });
    plan.cores.forEach(({ saturation }, index) => {
      if (saturation !== null)
        set(
          layout.core[index]!,
          magnetisingRow(network, index).map((value) => value / saturation.amps),
        );
    });
    plan.bends.forEach((bend, index) => {
      if (bend.stored !== null) set(layout.stored[index]!, unit(network, plan.states.stored[index]!));
    });
    this.#senses.forEach((sense, index) => {
      set(layout.senses + index, senseRow(network, sense));
    });
    this.#probes.forEach((probe, index) => {
      set(layout.senses + this.#senses.length + index, probe(network));
    });
    const a = motion(network);
    const rates = new Float64Array(rows.length);
    for (let r = 0; r < layout.count; r += 1)
      for (let k = 0; k < n; k += 1) {
        const factor = rows[r * n + k]!;
        if (factor !== 0) for (let j = 0; j < n; j += 1) rates[r * n + j]! += factor * a[k * n + j]!;
      }
    return { network, chain: startChain(a, n, TICK_LEVEL), rows, rates, watches: watchesOf(plan, table, layout, regions), moments: [] };
  }
}
