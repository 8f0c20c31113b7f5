import { setPointFor } from '../check/judge-set-points.ts';
import type { CircuitResult } from '../result/assessment.ts';
import { nameOf } from '../working/bench/bench.ts';
import { outputLimits } from '../working/circuit/output-limits.ts';
import type { Facts } from '../working/facts.ts';

/** The traced circuit in the case's own names; undefined where none was traced. */
export function toCircuitResult(facts: Facts): CircuitResult | undefined {
  const { bench, circuit } = facts;
  if (circuit === null) return undefined;
  const { recognised, ways } = circuit;
  const names = (ids: readonly string[]): string[] => ids.map((id) => nameOf(bench, id));
  const spreads = spreadsOf(facts);
  return {
    topology: { ...recognised.topology },
    jobs: circuit.circuit.parts
      .map(({ id, ref }) => {
        const found = recognised.jobs.get(id);
        return { part: id, ref, job: found?.job ?? null, at: names(found?.at ?? []), with: names(found?.with ?? []) };
      })
      .sort((a, b) => (a.part < b.part ? -1 : 1)),
    ways: ways.map(({ parts, nets }) => ({ parts: names(parts), nets: names(nets) })),
    ...(spreads.length === 0 ? {} : { spreads }),
  };
}

function spreadsOf(facts: Facts): NonNullable<CircuitResult['spreads']> {
  return facts.levels.flatMap((level) => {
    const found = setPointFor(facts, level);
    const limits = 'judgement' in found ? null : outputLimits(found.point);
    if (limits === null) return [];
    const { least, most, spread, drawn } = limits;
    return [
      {
        level: level.id,
        about: level.about,
        middle: (least.value + most.value) / 2,
        half: spread.value,
        least: least.value,
        most: most.value,
        draws: drawn.draws,
        from: drawn.least,
        to: drawn.most,
        counts: [...drawn.counts],
        window: level.window === null ? null : ([level.window.least.value, level.window.most.value] as [number, number]),
        harmful: level.window?.harmful?.value ?? null,
        step: spread.step.id,
      },
    ];
  });
}
