import { isRefusal } from '../../src/core/quantity/refusal.ts';
import type { Snapshot, SolverResult } from '../../src/core/solver/request.ts';
import { simulate } from '../../src/core/solver/simulate.ts';
import { TICK_S } from '../../src/core/solver/topology.ts';
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

export interface Settled {
  readonly volts: Readonly<Record<string, number>>;
  /**
   * What a controller that regulates from the primary side has learnt: its integral, how long the secondary conducts and its period
   * (seconds), its threshold.
   */
  readonly memory: Readonly<Record<string, number>>;
}
const DIGITS = 6;
const short = (value: number): number => Number(value.toPrecision(DIGITS));

/** Voltages of the capacitors and memory of the controller after `seconds`, six digits. */
export function settledStart({ circuit }: Described, seconds: number): Settled {
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
  const volts = Object.fromEntries(
    circuit.parts.flatMap(({ kind, ref }) => (kind === 'capacitor' ? [[ref, short(end.states[`${ref}/0`] ?? 0)]] : [])),
  );
  const { integral, conductedFor, period, thresholdV } = Object.values(end.controllers)[0] ?? {};
  if (typeof integral !== 'number') return { volts, memory: {} };
  const memory = {
    integral: short(integral),
    conductedS: short(Number(conductedFor) * TICK_S),
    periodS: short(Number(period) * TICK_S),
    thresholdV: short(Number(thresholdV)),
  };
  return { volts, memory };
}

/** A start like that of `startingAt`, with what the controller remembers. */
export function startRemembering({ circuit }: Described, { integral, conductedS, periodS, thresholdV }: Settled['memory']): Snapshot {
  const controller = circuit.parts.find(({ kind }) => kind === 'controller');
  return {
    ticks: 0,
    states: Object.fromEntries(circuit.parts.flatMap((part) => (part.kind === 'capacitor' ? [[`${part.ref}/0`, part.initialV ?? 0]] : []))),
    regions: {},
    heat: {},
    controllers: {
      [controller!.ref]: {
        integral: integral!,
        conductedFor: Math.round(conductedS! / TICK_S),
        period: Math.round(periodS! / TICK_S),
        thresholdV: thresholdV!,
      },
    },
  };
}

/** The same circuit with its capacitors charged to these voltages: both programs start there, and neither has to settle. */
export function startingAt(described: Described, volts: Readonly<Record<string, number>>): Described {
  const { circuit } = described;
  const parts = circuit.parts.map((part) => (part.kind === 'capacitor' ? { ...part, initialV: volts[part.ref] ?? 0 } : part));
  return { ...described, circuit: { ...circuit, parts } };
}
