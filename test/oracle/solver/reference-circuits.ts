import { readFileSync } from 'node:fs';
import { curveOf, type Described } from '../../../bench/solver/adapter.ts';
import { type BenchCircuit, CIRCUITS } from '../../../bench/solver/circuits.ts';
import { selfOscillating } from '../../../bench/solver/self-oscillating.ts';
import type { Part } from '../../../src/core/solver/circuit.ts';

/** Six short circuits that both programs run: written once, printed to the reference program, run by ours. */
const kept: Readonly<Record<string, { readonly start: Readonly<Record<string, number>> }>> = JSON.parse(
  readFileSync(new URL('../../../bench/solver/kept-ngspice.json', import.meta.url), 'utf8'),
);

/** A piece of a circuit of the comparison, from the same start, over a shorter time. */
function shortened(id: string, fromS: number, stopS: number): BenchCircuit {
  return { ...CIRCUITS[id]!([id, kept[id]?.start]), fromS, stopS };
}

const mains: Part = { kind: 'mains', ref: 'V1', pins: ['line', '0'], rmsV: 230, hertz: 50, phaseDeg: 30, ohms: 0.5 };
const diode = (ref: string, a: string, k: string): Part => ({
  kind: 'diode',
  ref,
  pins: [a, k],
  forward: curveOf('bridge'),
  junctionF: 20e-12,
});
const bulk = (a: string, b: string): Part => ({ kind: 'capacitor', ref: 'C1', pins: [a, b], farads: 10e-6, ohms: 1, initialV: 250 });

function rectifier(id: string, parts: readonly Part[], between: readonly [string, string]): BenchCircuit {
  const described: Described = {
    circuit: { title: id, earth: '0', parts },
    junctions: Object.fromEntries(parts.flatMap(({ kind, ref }) => (kind === 'diode' ? [[ref, 'bridge' as const]] : []))),
  };
  const volts = `V(${between.map((net) => (net === '0' ? '0' : net)).join(',')})`;
  return {
    id,
    start: {},
    described,
    fromS: 20e-3,
    stopS: 60e-3,
    compared: [
      { name: 'mean', probe: { volts: between }, of: volts.replace(',0)', ')'), take: 'mean', goal: 0.001 },
      { name: 'ripple', probe: { volts: between }, of: volts.replace(',0)', ')'), take: 'peakToPeak', goal: 0.005 },
    ],
    power: { ref: 'V1', of: '-I(VV1)*V(vV1)', goal: 0.005 },
    more: [],
    memory: {},
  };
}

const oscillating: BenchCircuit = {
  ...CIRCUITS['self-oscillating']!(['self-oscillating', {}]),
  described: selfOscillating(),
  fromS: 2e-3,
  stopS: 4e-3,
};

export const SHORT_CIRCUITS: readonly BenchCircuit[] = [
  rectifier(
    'one diode, capacitor and load',
    [mains, diode('D1', 'line', 'rail'), bulk('rail', '0'), { kind: 'resistor', ref: 'R1', pins: ['rail', '0'], ohms: 5e3 }],
    ['rail', '0'],
  ),
  rectifier(
    'bridge, capacitor and load',
    [
      mains,
      diode('D1', 'line', 'rail'),
      diode('D2', '0', 'rail'),
      diode('D3', 'low', 'line'),
      diode('D4', 'low', '0'),
      bulk('rail', 'low'),
      { kind: 'resistor', ref: 'R1', pins: ['rail', 'low'], ohms: 5e3 },
    ],
    ['rail', 'low'],
  ),
  shortened('shorted output', 0.2e-3, 0.6e-3),
  shortened('half load', 0.2e-3, 0.6e-3),
  shortened('bulk of 264 V mains', 0.2e-3, 0.6e-3),
  oscillating,
];
