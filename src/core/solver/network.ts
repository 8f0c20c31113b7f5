import { LuDecomposition, Matrix } from 'ml-matrix';
import { type CoilLaw, coilLaw } from './coils.ts';
import type { Between, Plan, Sense } from './plan.ts';
import { LIMITED, type RegionTable } from './regions.ts';

/** A row over the states: what a quantity is now. */
export type Row = Float64Array;

/** Ties an island without earth to it by one node; nothing flows there, so any value does. */
const TIE_SIEMENS = 1e-3;

/** The linear circuit that one list of regions leaves: node voltages as rows over the states, G v = B x. */
export interface Network {
  readonly plan: Plan;
  readonly table: RegionTable;
  readonly regions: Uint8Array;
  /** nodes by states. */
  readonly volts: Float64Array;
  readonly coils: readonly CoilLaw[];
}

export function buildNetwork(plan: Plan, table: RegionTable, regions: Uint8Array): Network {
  const n = plan.nodes;
  const { count, one, sine, stored, light, flux } = plan.states;
  const g = Matrix.zeros(n, n);
  const b = Matrix.zeros(n, count);
  const meet = (row: number, column: number, value: number): void => {
    if (row >= 0 && column >= 0) g.set(row, column, g.get(row, column) + value);
  };
  const transfer = (a: number, z: number, plus: number, minus: number, siemens: number): void => {
    meet(a, plus, siemens);
    meet(a, minus, -siemens);
    meet(z, plus, -siemens);
    meet(z, minus, siemens);
  };
  const conduct = (a: number, z: number, siemens: number): void => transfer(a, z, a, z, siemens);
  /** A current of value x[state] out of node a into node z, through the branch. */
  const draw = (a: number, z: number, state: number, value: number): void => {
    if (a >= 0) b.set(a, state, b.get(a, state) - value);
    if (z >= 0) b.set(z, state, b.get(z, state) + value);
  };

  const tied = new Set<number>([0]);
  plan.islandOf.forEach((island, node) => {
    if (tied.has(island)) return;
    tied.add(island);
    meet(node, node, TIE_SIEMENS);
  });
  for (const { a, b: z, siemens } of plan.conductances) conduct(a, z, siemens);
  plan.charges.forEach(({ a, b: z, ohms }, index) => {
    conduct(a, z, 1 / ohms);
    draw(a, z, index, -1 / ohms);
  });
  for (const { a, b: z, ohms, constant, sine: s, cosine: c } of plan.sources) {
    conduct(a, z, 1 / ohms);
    draw(a, z, one, -constant / ohms);
    if (s === 0 && c === 0) continue;
    draw(a, z, sine, -s / ohms);
    draw(a, z, sine + 1, -c / ohms);
  }
  plan.bends.forEach(({ a, b: z }, index) => {
    const { siemens, amps0, perStored } = table.bends[index]![regions[index]!]!;
    conduct(a, z, siemens);
    draw(a, z, one, amps0);
    if (perStored !== undefined) draw(a, z, stored[index]!, perStored);
  });
  plan.limited.forEach(({ a, b: z, zeroV, ohms, drive }, index) => {
    const region = regions[table.limitedFrom + index]!;
    if (region === LIMITED.saturated) {
      conduct(a, z, 1 / ohms);
      draw(a, z, one, -zeroV / ohms);
    } else if (region === LIMITED.follows) {
      if (drive.by === 'voltage') {
        transfer(a, z, drive.plus, drive.minus, drive.siemens);
        draw(a, z, one, -drive.siemens * drive.fromV);
      } else draw(a, z, drive.by === 'stored' ? stored[drive.bend]! : light + drive.light, 1);
    }
  });
  const coils = plan.cores.map((core, index) => coilLaw(core, regions[table.coresFrom + index]!));
  plan.cores.forEach(({ windings }, index) => {
    const { gamma, offset } = coils[index]!;
    windings.forEach(({ a, b: z }, i) => {
      let constant = 0;
      windings.forEach((_, j) => {
        draw(a, z, flux[index]! + j, gamma[i]![j]!);
        constant -= gamma[i]![j]! * offset[j]!;
      });
      draw(a, z, one, constant);
    });
  });
  const solved = n === 0 ? Matrix.zeros(0, count) : new LuDecomposition(g).solve(b);
  return { plan, table, regions: regions.slice(), volts: Float64Array.from(solved.to1DArray()), coils };
}

export const unit = (network: Network, state: number, value = 1): Row => {
  const row = new Float64Array(network.plan.states.count);
  row[state] = value;
  return row;
};

/** out += factor row */
export function addRow(out: Row, row: Row, factor = 1): Row {
  for (let j = 0; j < out.length; j += 1) out[j]! += factor * row[j]!;
  return out;
}

export function voltageRow({ plan, volts }: Network, plus: number, minus: number, factor = 1): Row {
  const n = plan.states.count;
  const row = new Float64Array(n);
  for (let j = 0; j < n; j += 1) row[j] = factor * ((plus >= 0 ? volts[plus * n + j]! : 0) - (minus >= 0 ? volts[minus * n + j]! : 0));
  return row;
}

export function senseRow(network: Network, { terms, constant }: Sense): Row {
  const row = unit(network, network.plan.states.one, constant);
  for (const { factor, plus, minus } of terms) addRow(row, voltageRow(network, plus, minus), factor);
  return row;
}

export function windingCurrentRow(network: Network, core: number, winding: number): Row {
  const { gamma, offset } = network.coils[core]!;
  const { flux, one } = network.plan.states;
  const row = unit(network, one, 0);
  gamma[winding]!.forEach((value, j) => {
    row[flux[core]! + j]! += value;
    row[one]! -= value * offset[j]!;
  });
  return row;
}

/** Current of the first winding that would magnetise the core alone: the sum of ratio times current. */
export function magnetisingRow(network: Network, core: number): Row {
  const row = new Float64Array(network.plan.states.count);
  network.plan.cores[core]!.windings.forEach(({ ratio }, winding) => {
    addRow(row, windingCurrentRow(network, core, winding), ratio);
  });
  return row;
}

/** What drives a limited current, in ampere. */
export function driveRow(network: Network, index: number): Row {
  const { drive } = network.plan.limited[index]!;
  const { stored, light, one } = network.plan.states;
  if (drive.by === 'stored') return unit(network, stored[drive.bend]!);
  if (drive.by === 'light') return unit(network, light + drive.light);
  const row = voltageRow(network, drive.plus, drive.minus, drive.siemens);
  row[one]! -= drive.siemens * drive.fromV;
  return row;
}

/** What saturation allows a limited current, in ampere. */
export function ceilingRow(network: Network, index: number): Row {
  const { a, b, zeroV, ohms } = network.plan.limited[index]!;
  const row = voltageRow(network, a, b, 1 / ohms);
  row[network.plan.states.one]! -= zeroV / ohms;
  return row;
}

export interface BranchRows {
  readonly ref: string;
  readonly volts: Row;
  readonly amps: Row;
}

/** Voltage and current of every branch that can turn electric energy into heat (or, for a source, deliver it). */
export function branchRows(network: Network): { readonly lossy: BranchRows[]; readonly sources: BranchRows[] } {
  const { plan, table, regions } = network;
  const { one, sine } = plan.states;
  const across = ({ a, b }: Between): Row => voltageRow(network, a, b);
  const lossy: BranchRows[] = [];
  for (const branch of plan.conductances) {
    const volts = across(branch);
    lossy.push({ ref: branch.ref, volts, amps: volts.map((value) => value * branch.siemens) });
  }
  plan.charges.forEach((branch, index) => {
    const volts = addRow(across(branch), unit(network, index), -1);
    lossy.push({ ref: branch.ref, volts, amps: volts.map((value) => value / branch.ohms) });
  });
  plan.bends.forEach((branch, index) => {
    const { siemens, amps0, perStored } = table.bends[index]![regions[index]!]!;
    const volts = across(branch);
    const amps = addRow(unit(network, one, amps0), volts, siemens);
    if (perStored !== undefined) amps[plan.states.stored[index]!]! += perStored;
    lossy.push({ ref: branch.ref, volts, amps });
  });
  plan.limited.forEach((branch, index) => {
    const region = regions[table.limitedFrom + index]!;
    if (region === LIMITED.off) return;
    lossy.push({
      ref: branch.ref,
      volts: across(branch),
      amps: region === LIMITED.follows ? driveRow(network, index) : ceilingRow(network, index),
    });
  });
  plan.cores.forEach((core, index) => {
    core.windings.forEach(({ ohms }, winding) => {
      const amps = windingCurrentRow(network, index, winding);
      lossy.push({ ref: core.ref, volts: amps.map((value) => value * ohms), amps });
    });
  });
  const sources: BranchRows[] = plan.sources.map((source) => {
    const inner = unit(network, one, source.constant);
    if (sine >= 0) {
      inner[sine]! += source.sine;
      inner[sine + 1]! += source.cosine;
    }
    const drop = addRow(inner.slice(), across(source), -1);
    const amps = drop.map((value) => value / source.ohms);
    lossy.push({ ref: source.ref, volts: drop, amps });
    return { ref: source.ref, volts: inner, amps };
  });
  return { lossy, sources };
}

/** A of x' = A x. */
export function motion(network: Network): Float64Array {
  const { plan, table, regions } = network;
  const { count: n, one, sine, flux, stored, light } = plan.states;
  const a = new Float64Array(n * n);
  const put = (state: number, row: Row, factor: number): void => {
    for (let j = 0; j < n; j += 1) a[state * n + j]! += factor * row[j]!;
  };
  plan.charges.forEach(({ a: plus, b: minus, ohms, farads }, index) => {
    put(index, voltageRow(network, plus, minus), 1 / (ohms * farads));
    a[index * n + index]! -= 1 / (ohms * farads);
  });
  plan.cores.forEach(({ windings }, index) => {
    windings.forEach(({ a: plus, b: minus, ohms }, winding) => {
      const state = flux[index]! + winding;
      put(state, voltageRow(network, plus, minus), 1);
      put(state, windingCurrentRow(network, index, winding), -ohms);
    });
  });
  const bendCurrent = (index: number, siemens: number, amps0: number): Row => {
    const { a: plus, b: minus } = plan.bends[index]!;
    return addRow(unit(network, one, amps0), voltageRow(network, plus, minus), siemens);
  };
  plan.bends.forEach((bend, index) => {
    if (bend.stored === null) return;
    const state = stored[index]!;
    const { siemens, amps0, perStored } = table.bends[index]![regions[index]!]!;
    // only a forward piece fills or empties the charge; it always recombines
    if (regions[index]! >= bend.stored.firstRegion) {
      const amps = bendCurrent(index, siemens, amps0);
      if (perStored !== undefined) amps[state]! += perStored;
      put(state, amps, 1 / bend.stored.transitS);
    }
    a[state * n + state]! -= 1 / (bend.stored.transitS * bend.stored.gain);
  });
  plan.lights.forEach(({ bend, lines, perSecond }, index) => {
    const state = light + index;
    const { siemens, amps0 } = lines[regions[bend]!]!;
    put(state, bendCurrent(bend, siemens, amps0), perSecond);
    a[state * n + state]! -= perSecond;
  });
  if (sine >= 0) {
    a[sine * n + sine + 1] = plan.radPerSecond;
    a[(sine + 1) * n + sine] = -plan.radPerSecond;
  }
  return a;
}
