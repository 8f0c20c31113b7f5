import type { Refusal } from '../quantity/refusal.ts';
import { accountOf, integrate, storedEnergy } from './energy-balance.ts';
import { floats } from './probe-row.ts';
import type { Outcome, SolverRequest, SolverResult } from './request.ts';
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
  const result = toResult(request, run, run.forward(request.stopS, request.fromS), begin);
  run.release();
  return result;
}

/** What a run has seen since it began to count. */
export function toResult(request: SolverRequest, run: Run, outcome: Outcome, begin: number): SolverResult {
  const seconds = (run.tick - run.countedFrom) * TICK_S;
  const counted = run.counts && seconds > 0;
  const integrals = integrate(run.topologies, run.probeRows, request.probes.length);
  const energy = accountOf(integrals, counted ? storedEnergy(run.plan, run.topology, run.x) - run.storedThen : 0);
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
    probes: counted ? Object.fromEntries(probes) : {},
    lossW: counted ? watts(integrals.lossJ) : {},
    sourceW: counted ? watts(integrals.sourceJ) : {},
    findings: run.findings,
    energy,
    controllers: Object.fromEntries(run.board.units.map((unit) => [unit.ref, { ...unit.counts, running: unit.running }])),
    waveform: run.waveform,
    end: takeSnapshot(run.plan, run.tick, run.x, run.regions, run.heat, run.board.units),
    effort: { ...run.effort },
  };
}
