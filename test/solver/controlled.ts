import type { Controller, Part } from '../../src/core/solver/circuit.ts';
import { battery, capacitor, kneeDiode, resistor } from './run-circuit.ts';

/** A flyback converter with nothing lossy in it that theory does not have: 100 V in, ratio 10 to 1, 1 mH. */
export interface IdealChoice {
  readonly law: Controller['law'];
  readonly loadOhms: number;
  readonly outputV: number;
  readonly feedbackV?: number;
  readonly supplyV?: number;
  readonly lockout?: Controller['lockout'];
  readonly supply?: readonly Part[];
}
export const INPUT_V = 100;
export const PRIMARY_H = 1e-3;

export function idealFlyback({ law, loadOhms, outputV, feedbackV = 5, supplyV = 15, lockout, supply }: IdealChoice): Part[] {
  return [
    battery('V1', 'bulk', '0', INPUT_V, 1e-3),
    {
      kind: 'transformer',
      ref: 'T1',
      magnetisingH: PRIMARY_H,
      coreOhms: 2e5, // a twentieth of a watt, so that nothing rings for ever
      windings: [
        { name: 'primary', pins: ['bulk', 'drain'], turns: 100, ohms: 1e-3, leakageH: 0 },
        { name: 'secondary', pins: ['0', 'anode'], turns: 10, ohms: 0.02, leakageH: 1e-8, selfF: 50e-12 },
        { name: 'auxiliary', pins: ['0', 'aux'], turns: 20, ohms: 1e-3, leakageH: 4e-8, selfF: 20e-12 },
      ],
    },
    {
      kind: 'switch',
      ref: 'Q1',
      pins: ['drain', 'sense'],
      onOhms: 1e-2,
      outputF: 20e-12,
      body: [
        [0.1, 0.75],
        [1, 0.9],
      ],
      breakdown: { volts: 800, ohms: 10 },
    },
    resistor('R3', 'sense', '0', 0.1),
    kneeDiode('D5', 'anode', 'out', 0.01, 1e-3),
    capacitor('C6', 'out', '0', 1e-3, 1e-3, outputV),
    { kind: 'load', ref: 'RL', pins: ['out', '0'], draw: { ohms: loadOhms } },
    ...('feedback' in law ? [battery('V3', 'feedback', '0', feedbackV, 10)] : []),
    ...(supply ?? [battery('V2', 'supply', '0', supplyV, 1)]),
    {
      kind: 'controller',
      ref: 'U1',
      drives: 'Q1',
      ground: '0',
      supply: 'supply',
      lockout: lockout ?? { startV: 12, stopV: 8, idleA: 0, runningA: 1e-3 },
      law,
    },
  ];
}

export const PEAK = {
  type: 'peakCurrent',
  sense: 'sense',
  limitV: 0.1,
  blankS: 100e-9,
  delayS: 0,
  feedback: 'feedback',
  offsetV: 0,
  divider: 1,
  leastV: 0.01,
  burst: { stopV: 0.005, goV: 0.006 },
  hertz: 50e3,
  dutyMost: 0.6,
} as const;
