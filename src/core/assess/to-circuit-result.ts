import type { CircuitResult } from '../result/assessment.ts';
import { nameOf } from '../working/bench/bench.ts';
import type { Facts } from '../working/facts.ts';

/** The traced circuit in the case's own names; undefined where none was traced. */
export function toCircuitResult({ bench, circuit }: Facts): CircuitResult | undefined {
  if (circuit === null) return undefined;
  const { recognised, ways } = circuit;
  const names = (ids: readonly string[]): string[] => ids.map((id) => nameOf(bench, id));
  return {
    topology: { ...recognised.topology },
    jobs: circuit.circuit.parts
      .map(({ id, ref }) => {
        const found = recognised.jobs.get(id);
        return { part: id, ref, job: found?.job ?? null, at: names(found?.at ?? []), with: names(found?.with ?? []) };
      })
      .sort((a, b) => (a.part < b.part ? -1 : 1)),
    ways: ways.map(({ parts, nets }) => ({ parts: names(parts), nets: names(nets) })),
  };
}
