import { coreEnergy } from './coils.ts';
import { integralOf, integralOfMoments } from './moments.ts';
import { branchRows, windingCurrentRow } from './network.ts';
import type { Plan } from './plan.ts';
import type { EnergyAccount } from './request.ts';
import type { Topologies, Topology } from './topology.ts';

/** A run balances when no more than this share of its energy is unaccounted for. */
const BALANCED = 0.01;

/** Energy in capacitors and cores, joule. */
export function storedEnergy(plan: Plan, topology: Topology, x: Float64Array): number {
  const { network } = topology;
  let sum = 0;
  plan.charges.forEach(({ farads }, index) => {
    sum += (farads * x[index]! * x[index]!) / 2;
  });
  plan.cores.forEach((core, index) => {
    const first = plan.states.flux[index]!;
    const fluxes = core.windings.map((_, winding) => x[first + winding]!);
    const currents = core.windings.map((_, winding) =>
      windingCurrentRow(network, index, winding).reduce((total, factor, j) => total + factor * x[j]!, 0),
    );
    sum += coreEnergy(core, network.regions[network.table.coresFrom + index]!, fluxes, currents);
  });
  return sum;
}

/** Sums over the counted part of a run. */
export interface Integrals {
  readonly lossJ: Map<string, number>;
  readonly sourceJ: Map<string, number>;
  /** Integral of each probe, and of its square. */
  readonly probes: { readonly first: number; readonly second: number }[];
}

export function integrate(topologies: Topologies, probeRows: number, probes: number): Integrals {
  const lossJ = new Map<string, number>();
  const sourceJ = new Map<string, number>();
  const sums = Array.from({ length: probes }, () => ({ first: 0, second: 0 }));
  const add = (to: Map<string, number>, ref: string, joule: number): void => {
    to.set(ref, (to.get(ref) ?? 0) + joule);
  };
  const { count: n, one } = topologies.plan.states;
  for (const topology of topologies.known.values()) {
    const m = integralOfMoments(topologies.bench, topology);
    if (m === null) continue;
    const { lossy, sources } = branchRows(topology.network);
    for (const { ref, volts, amps } of lossy) add(lossJ, ref, integralOf(volts, m, amps));
    for (const { ref, volts, amps } of sources) add(sourceJ, ref, integralOf(volts, m, amps));
    sums.forEach((sum, index) => {
      const row = topology.rows.subarray((probeRows + index) * n, (probeRows + index + 1) * n);
      for (let j = 0; j < n; j += 1) sum.first += row[j]! * m[j * n + one]!;
      sum.second += integralOf(row, m, row);
    });
  }
  return { lossJ, sourceJ, probes: sums };
}

export function accountOf({ lossJ, sourceJ }: Integrals, storedJ: number): EnergyAccount {
  const sum = (of: Map<string, number>): number => [...of.values()].reduce((total, one) => total + one, 0);
  const deliveredJ = sum(sourceJ);
  const dissipatedJ = sum(lossJ);
  const largest = Math.max(Math.abs(deliveredJ), Math.abs(dissipatedJ), Math.abs(storedJ));
  const imbalance = largest === 0 ? 0 : (deliveredJ - dissipatedJ - storedJ) / largest;
  return { deliveredJ, dissipatedJ, storedJ, imbalance, balanced: Math.abs(imbalance) <= BALANCED };
}
