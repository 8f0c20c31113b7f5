import { isRefusal } from '../../src/core/quantity/refusal.ts';
import type { Part } from '../../src/core/solver/circuit.ts';
import type { ProbeResult, Quantity, SolverRequest, SolverResult } from '../../src/core/solver/request.ts';
import { simulate } from '../../src/core/solver/simulate.ts';

export const BUDGET = { steps: 5e7, topologies: 3000 } as const;

/** A run that must be possible, with everything that a test does not care about filled in. */
export function runCircuit(
  parts: readonly Part[],
  stopS: number,
  probes: Readonly<Record<string, Quantity>> = {},
  more: Partial<SolverRequest> = {},
): SolverResult {
  const result = simulate({
    circuit: { title: 'test', earth: '0', parts },
    stopS,
    fromS: 0,
    start: 'given',
    probes: Object.entries(probes).map(([id, of]) => ({ id, of })),
    accuracy: 'report',
    most: BUDGET,
    endAtRating: false,
    ...more,
  });
  if (Array.isArray(result)) throw new Error(result.map((one) => JSON.stringify(one)).join('\n'));
  return result as SolverResult;
}

export function numberOf(result: SolverResult, id: string): ProbeResult {
  const probe = result.probes[id];
  if (probe === undefined || 'because' in probe || isRefusal(probe)) throw new Error(`no number for ${id}`);
  return probe;
}

export const resistor = (ref: string, a: string, b: string, ohms: number): Part => ({ kind: 'resistor', ref, pins: [a, b], ohms });
export const capacitor = (ref: string, a: string, b: string, farads: number, ohms: number, initialV = 0): Part => ({
  kind: 'capacitor',
  ref,
  pins: [a, b],
  farads,
  ohms,
  initialV,
});
export const inductor = (ref: string, a: string, b: string, henries: number, ohms: number, initialA = 0): Part => ({
  kind: 'inductor',
  ref,
  pins: [a, b],
  henries,
  ohms,
  initialA,
});
export const battery = (ref: string, a: string, b: string, volts: number, ohms: number): Part => ({
  kind: 'dcSource',
  ref,
  pins: [a, b],
  volts,
  ohms,
});
/** A diode that is nearly a straight line behind a knee. */
export const kneeDiode = (ref: string, a: string, k: string, kneeV: number, ohms: number): Part => ({
  kind: 'diode',
  ref,
  pins: [a, k],
  forward: [
    [0.1, kneeV + 0.1 * ohms],
    [1, kneeV + ohms],
  ],
});
