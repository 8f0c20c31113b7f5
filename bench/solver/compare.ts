import type { SolverResult } from '../../src/core/solver/request.ts';
import type { BenchCircuit, Compared } from './circuits.ts';
import { printNetlist } from './print-netlist.ts';
import { type NgspiceRun, runNgspice } from './run-ngspice.ts';
import { mustRun, startRemembering } from './settled.ts';

/** The tight setting that all values are compared at, and a cheap one for speed alone. */
export const TIGHT = { options: 'method=trap reltol=1e-4 abstol=1n vntol=10u', longestStepS: 50e-9 } as const;
export const CHEAP = { options: 'method=gear reltol=1e-3 abstol=1n vntol=100u', longestStepS: 200e-9 } as const;

const KINDS = { mean: ['AVG'], most: ['MAX'], peakToPeak: ['MAX', 'MIN'], rate: ['AVG'] } as const;
const nameOf = (index: number, kind: string): string => `q${index}${kind.toLowerCase()}`;

export function netlistOf(
  { described, stopS, fromS, compared, power, more, memory }: BenchCircuit,
  setting: { options: string; longestStepS: number },
): string {
  return printNetlist(described, {
    stopS,
    fromS,
    more,
    memory,
    ...setting,
    measures: [
      ...compared.flatMap((one, index) =>
        KINDS[one.take].map((kind) => ({ name: nameOf(index, kind), kind, of: one.of, ...('count' in one ? { fromS: 0 } : {}) })),
      ),
      { name: 'power', kind: 'AVG' as const, of: power.of },
    ],
  });
}

const namesOf = ({ compared }: BenchCircuit): string[] => [
  ...compared.flatMap(({ take }, index) => KINDS[take].map((kind) => nameOf(index, kind))),
  'power',
];

export const runReference = (circuit: BenchCircuit, setting: { options: string; longestStepS: number } = TIGHT): NgspiceRun =>
  runNgspice(netlistOf(circuit, setting), namesOf(circuit));

const SAMPLE_S = 200e-9;

/** How often a waveform rises through `highV` after it has been below `lowV`. */
function risesOf(values: readonly number[], { lowV, highV }: { readonly lowV: number; readonly highV: number }): number {
  let count = 0;
  let low = false;
  for (const volts of values) {
    if (volts < lowV) low = true;
    if (!low || volts < highV) continue;
    low = false;
    count += 1;
  }
  return count;
}

/** Our own run; a controller that remembers something starts with it, else from what the parts say. */
export function runOurs(
  { described, stopS, fromS, compared, memory }: BenchCircuit,
  accuracy: 'report' | 'screening' = 'report',
): SolverResult {
  const { circuit } = described;
  // samples close enough to see every swing, kept only where somebody counts them
  const counted = compared.some((one) => 'rises' in one) ? { waveform: { spacingS: SAMPLE_S, fromS } } : {};
  const remembers = Object.keys(memory).length > 0;
  return mustRun({
    circuit,
    stopS,
    fromS,
    accuracy,
    start: remembers ? startRemembering(described, memory) : 'given',
    probes: compared.flatMap((one, index) => {
      if ('count' in one) return [];
      return [{ id: String(index), of: 'rises' in one ? one.rises.probe : one.probe }];
    }),
    ...counted,
    most: { steps: 1e9, topologies: 5000 },
    endAtRating: false,
  });
}

export interface Difference {
  readonly name: string;
  readonly ours: number;
  readonly theirs: number;
  /** |ours - theirs| / |theirs|. */
  readonly share: number;
  readonly goal: number;
}

export function differences(circuit: BenchCircuit, ours: SolverResult, theirs: Readonly<Record<string, number>>): Difference[] {
  const difference = (name: string, mine: number, reference: number, goal: number): Difference => ({
    name,
    ours: mine,
    theirs: reference,
    share: Math.abs(mine - reference) / Math.abs(reference),
    goal,
  });
  const taken = (one: Compared, index: number): Difference => {
    if ('count' in one) {
      // counted over the whole run, on both sides
      const count = Object.values(ours.controllers).reduce((sum, unit) => sum + unit[one.count], 0);
      return difference(one.name, count / ours.reachedS, theirs[nameOf(index, 'AVG')]!, one.goal);
    }
    if ('rises' in one) {
      const at = Object.keys(ours.probes).indexOf(String(index));
      const count = risesOf(ours.waveform!.values[at]!, one.rises);
      return difference(one.name, count / (circuit.stopS - circuit.fromS), theirs[nameOf(index, 'AVG')]!, one.goal);
    }
    const { take, name, goal } = one;
    const probe = ours.probes[String(index)];
    if (probe === undefined || 'because' in probe) throw new Error(`${circuit.id}: no number for ${name}`);
    const at = (kind: string): number => theirs[nameOf(index, kind)]!;
    if (take === 'mean') return difference(name, probe.mean, at('AVG'), goal);
    if (take === 'most') return difference(name, probe.most, at('MAX'), goal);
    return difference(name, probe.most - probe.least, at('MAX') - at('MIN'), goal);
  };
  return [
    ...circuit.compared.map(taken),
    difference('input power', ours.sourceW[circuit.power.ref]!, theirs['power']!, circuit.power.goal),
  ];
}
