import { isRefusal } from '../../src/core/quantity/refusal.ts';
import type { SolverResult } from '../../src/core/solver/request.ts';
import { simulate } from '../../src/core/solver/simulate.ts';
import type { Described } from './adapter.ts';

/** A run that must be possible. */
export function mustRun(request: Parameters<typeof simulate>[0]): SolverResult {
  const result = simulate(request);
  if (Array.isArray(result))
    throw new Error(
      result
        .filter(isRefusal)
        .map((one) => JSON.stringify(one))
        .join('\n'),
    );
  return result as SolverResult;
}

/** Voltages of the capacitors after `seconds`, six digits. */
export function settledVoltages({ circuit }: Described, seconds: number): Record<string, number> {
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
  return Object.fromEntries(
    circuit.parts.flatMap(({ kind, ref }) => (kind === 'capacitor' ? [[ref, Number((end.states[`${ref}/0`] ?? 0).toPrecision(6))]] : [])),
  );
}

/** The same circuit with its capacitors charged to these voltages: both programs start there, and neither has to settle. */
export function startingAt(described: Described, volts: Readonly<Record<string, number>>): Described {
  const { circuit } = described;
  const parts = circuit.parts.map((part) => (part.kind === 'capacitor' ? { ...part, initialV: volts[part.ref] ?? 0 } : part));
  return { ...described, circuit: { ...circuit, parts } };
}
