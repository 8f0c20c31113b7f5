import { Bench, type IncrementChain, startChain } from './increment-matrix.ts';
import type { Arena, Block } from './kernel/arena.ts';
import { type Look, lookAt } from './look.ts';
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
import { AFTER_EVENT } from './step-settings.ts';
import { layRows, type RowLayout, type Watch, watchesOf } from './watch.ts';
import { tableOf, type WatchTable } from './watch-table.ts';

/** Smallest step, 2^-31 s = 0.47 ns: times are whole numbers of it. */
export const TICK_LEVEL = -31;
export const TICK_S = powerOfTwo(TICK_LEVEL);

/** All that is known of the circuit while no part changes its region. */
export interface Topology {
  readonly network: Network;
  readonly chain: IncrementChain;
  /** Rows of the layout over the states. */
  readonly rows: Float64Array;
  readonly look: Look;
  readonly watches: readonly Watch[];
  readonly table: WatchTable;
  /** Sums of x xᵀ over the steps taken, by level above the tick (moments.ts); whether there are any. */
  readonly moments: (Block | undefined)[];
  counted: boolean;
  /** Length of the first step that was good enough when this topology was last come to, as a level. */
  entry: number;
  /** What one change of region leads to, by number of device and region. */
  readonly next: Map<number, Topology>;
}

/** More than any part has regions. */
const REGIONS = 256;

/** Builds each topology once and keeps it. */
export class Topologies {
  readonly plan: Plan;
  readonly table: RegionTable;
  readonly layout: RowLayout;
  readonly bench: Bench;
  readonly known = new Map<string, Topology>();
  /** Rows looked at in every topology, and their places: probes first, then senses, then `bends`. */
  readonly always: readonly number[];
  readonly #senses: readonly Sense[];
  readonly #probes: readonly ((network: Network) => Row)[];
  readonly #slack: number;

  /** `bends` are looked at always; `slack`: how far past a corner a straight piece may be left, volts. */
  constructor(
    arena: Arena,
    plan: Plan,
    table: RegionTable,
    senses: readonly Sense[],
    probes: readonly ((network: Network) => Row)[],
    bends: readonly number[],
    slack: number,
  ) {
    this.plan = plan;
    this.table = table;
    this.#senses = senses;
    this.#probes = probes;
    this.#slack = slack;
    this.layout = layRows(plan, table, senses.length + probes.length, bends);
    this.bench = new Bench(arena, plan.states.count);
    const { senses: first, bend } = this.layout;
    this.always = [
      ...new Set([...probes.map((_, i) => first + senses.length + i), ...senses.map((_, i) => first + i), ...bends.map((i) => bend[i]!)]),
    ];
  }

  at(regions: Uint8Array): Topology {
    const key = keyOf(regions);
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const built = this.#build(regions);
    this.known.set(key, built);
    return built;
  }

  /** The topology after one device has changed its region; `regions` has changed already. */
  after(from: Topology, device: number, to: number, regions: Uint8Array): Topology {
    const change = device * REGIONS + to;
    const known = from.next.get(change);
    if (known !== undefined) return known;
    const found = this.at(regions);
    from.next.set(change, found);
    return found;
  }

  #build(regions: Uint8Array): Topology {
    const { plan, table, layout, bench } = this;
    const network = buildNetwork(plan, table, regions);
    const n = plan.states.count;
    const rows = this.#rowsOf(network);
    const a = motion(network);
    const rates = new Float64Array(rows.length);
    for (let r = 0; r < layout.count; r += 1)
      for (let k = 0; k < n; k += 1) {
        const factor = rows[r * n + k]!;
        if (factor !== 0) for (let j = 0; j < n; j += 1) rates[r * n + j]! += factor * a[k * n + j]!;
      }
    const watches = watchesOf(plan, table, layout, regions);
    const wanted = new Set(this.always);
    for (const { row, also } of watches) {
      wanted.add(row);
      if (also !== undefined) wanted.add(also.row);
    }
    const look = lookAt(bench.arena, rows, rates, n, [...wanted]);
    return {
      network,
      chain: startChain(bench, a, TICK_LEVEL),
      rows,
      look,
      watches,
      table: tableOf(watches, (row) => look.placeOf[row]!, this.#slack),
      moments: [],
      counted: false,
      entry: AFTER_EVENT,
      next: new Map(),
    };
  }

  #rowsOf(network: Network): Float64Array {
    const { plan, layout } = this;
    const n = plan.states.count;
    const rows = new Float64Array(layout.count * n);
    const set = (at: number, row: Row): void => {
      if (at >= 0) rows.set(row, at * n);
    };
    plan.bends.forEach(({ a, b, stored }, index) => {
      const row = voltageRow(network, a, b);
      if (stored !== null) {
        // what drives current into the base: less the voltage that its charge holds up
        const { siemens, perStored = 0 } = this.table.bends[index]![stored.firstRegion]!;
        row[plan.states.stored[index]!]! += perStored / siemens;
      }
      set(layout.bend[index]!, row);
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
      if (bend.stored !== null) set(layout.stored[index]!, unit(network, plan.states.stored[index]!, bend.stored.ohms));
    });
    this.#senses.forEach((sense, index) => {
      set(layout.senses + index, senseRow(network, sense));
    });
    this.#probes.forEach((probe, index) => {
      set(layout.senses + this.#senses.length + index, probe(network));
    });
    return rows;
  }
}
