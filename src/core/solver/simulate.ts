import type { Refusal } from '../quantity/refusal.ts';
import { accountOf, integrate, storedEnergy } from './energy-balance.ts';
import { floats } from './probe-row.ts';
import type { SolverRequest, SolverResult } from './request.ts';
import { Run } from './run.ts';
import { takeSnapshot } from './snapshot.ts';
import { TICK_S } from './topology.ts';
import { validateRequest } from './validate-request.ts';

/** Runs a circuit. Same request, same bytes. Refuses what it cannot run; how a run ended is part of the result. */
export function simulate(request: SolverRequest): SolverResult | readonly Refusal[] {
  const refusals = validateRequest(request);
  if (refusals.length > 0) return refusals;
  const run = new Run(request);
  const begin = run.tick;
  let storedAtStart = 0;
  let countedFrom = run.tick;
  run.onCounting = () => {
    storedAtStart = storedEnergy(run.plan, run.topology, run.x);
    countedFrom = run.tick;
  };
  const outcome = run.toEnd();
  const seconds = (run.tick - countedFrom) * TICK_S;
  const integrals = integrate(run.topologies, run.probeRows, request.probes.length);
  const energy = accountOf(integrals, seconds > 0 ? storedEnergy(run.plan, run.topology, run.x) - storedAtStart : 0);
  const probes = request.probes.map(({ id, of }, index) => {
    if (floats(request.circuit, run.plan, of)) return [id, { because: 'floating' } as const] as const;
    const { first, second } = integrals.probes[index]!;
    const value = {
      mean: first / seconds,
      rms: Math.sqrt(Math.max(0, second / seconds)),
      least: run.extremes.least[index]!,
      most: run.extremes.most[index]!,
    };
    return [id, value] as const;
  });
  const watts = (of: Map<string, number>): Record<string, number> =>
    Object.fromEntries([...of].map(([ref, joule]) => [ref, joule / seconds]));
  return {
    outcome,
    reachedS: (run.tick - begin) * TICK_S,
    probes: seconds > 0 ? Object.fromEntries(probes) : {},
    lossW: seconds > 0 ? watts(integrals.lossJ) : {},
    sourceW: seconds > 0 ? watts(integrals.sourceJ) : {},
    findings: run.findings,
    energy,
    controllers: Object.fromEntries(run.board.units.map((unit) => [unit.ref, { ...unit.counts, running: unit.running }])),
    waveform: run.waveform,
    end: takeSnapshot(run.plan, run.tick, run.x, run.regions, run.heat, run.board.units),
    effort: { ...run.effort },
  };
}
