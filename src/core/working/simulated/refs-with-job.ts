import type { JobKey } from '../../circuit/recognise/job.ts';
import type { CircuitFacts } from '../circuit/circuit-facts.ts';

/** References of the traced parts that are there for that. */
export function refsWithJob({ circuit }: { readonly circuit: CircuitFacts | null }, job: JobKey): Set<string> {
  return new Set((circuit?.circuit.parts ?? []).flatMap(({ id, ref }) => (circuit?.recognised.jobs.get(id)?.job === job ? [ref] : [])));
}
