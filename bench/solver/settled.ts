import { isRefusal } from '../../src/core/quantity/refusal.ts';
import type { SolverResult } from '../../src/core/solver/request.ts';
import { simulate } from '../../src/core/solver/simulate.ts';
import type { Described } from './adapter.ts';

/** A run that must be possible. */
export function mustRun(request: Parameters<typeof simulate>[0]): SolverResult {
  const result = simulate(request);
  if (Array.isArray(result)) throw new Error(result.filter(isRefusal).map((one) => JSON.stringify(one)).join('\n'));
  return result as SolverResult;
}

/** The same circuit with its capacitors charged as they are after `seconds`: both programs start there, and neither has to settle. */
export function settled(described: Described, seconds: number): Described {
  const { circuit } = described;
  const { end } = mustRun({
    circuit,
    stopS: seconds,
    fromS: 0,
    start: 'given',
    probes: [],
    accuracy: 'screening',
    most: { steps: 1e9, topologies: 5000 },
    endAtRating: false,
  });
  const parts = circuit.parts.map((part) =>
    part.kind === 'capacitor' ? { ...part, initialV: Number((end.states[`${part.ref}/0`] ?? 0).toPrecision(6)) } : part,
  );
  return { ...described, circuit: { ...circuit, parts } };
}
