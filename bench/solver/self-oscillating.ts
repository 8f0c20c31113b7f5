import type { Bipolar, Part } from '../../src/core/solver/circuit.ts';
import { junctionPoints } from '../../src/core/solver/segment-curve.ts';
import { curveOf, type Described, type Junction } from './adapter.ts';

const TURNS = { primary: 120, secondary: 10, base: 10 } as const;
const LEAKAGE = 0.01; // of each winding's own inductance

export interface SelfOscillatingChoice {
  readonly primaryH?: number;
  readonly loadOhms?: number;
  readonly inputV?: number;
}

/**
 * Collector to base: the cards below have 20 pF and 5 pF at no voltage, which fall with it, C = C0 (1 + V / 0.75 V)^-0.33. Ours are constant
 * and hold the same charge at the voltage they swing to: 3.6 pF at 430 V, 3.3 pF at 5 V.
 */
const COLLECTOR_BASE_F = { power: 3.6e-12, small: 3.3e-12 } as const;

const transistor = (ref: string, collector: string, base: string, emitter: string, more: Partial<Bipolar>): Bipolar => ({
  kind: 'bipolar',
  ref,
  collector,
  base,
  emitter,
  gain: 20,
  transitS: 40e-9,
  baseV: 0.73,
  baseOhms: 0.5,
  saturationV: 0.05,
  saturationOhms: 0.3,
  collectorF: 2e-12,
  collectorBaseF: COLLECTOR_BASE_F.power,
  baseF: 200e-12,
  baseBreakdownV: 9,
  breakdown: { volts: 1500, ohms: 50 },
  ...more,
});

/** The junction's own law over what its charge can carry: the saturation current of the reference program's card, no resistance. */
const baseCurve = (saturationA: number, amps: readonly number[]) => junctionPoints({ saturationA, ideality: 1, seriesOhms: 0 }, amps);

/** An invented self-oscillating converter with two transistors: base winding with RC, current sense, Zener on the auxiliary. 5 V 0.5 A. */
export function selfOscillating(choice: SelfOscillatingChoice = {}): Described {
  const primaryH = choice.primaryH ?? 2.4e-3;
  const junctions: Record<string, Junction> = {};
  const leak = (turns: number): number => LEAKAGE * primaryH * (turns / TURNS.primary) * (turns / TURNS.primary);
  const diode = (ref: string, a: string, k: string, law: Junction, junctionF: number): Part => {
    junctions[ref] = law;
    return { kind: 'diode', ref, pins: [a, k], forward: curveOf(law), junctionF };
  };
  const parts: Part[] = [
    { kind: 'dcSource', ref: 'V1', pins: ['bulk', 'common'], volts: choice.inputV ?? 325, ohms: 0.1 },
    {
      kind: 'transformer',
      ref: 'T1',
      magnetisingH: primaryH,
      coreOhms: 3e5,
      windings: [
        { name: 'primary', pins: ['bulk', 'collector'], turns: TURNS.primary, ohms: 4, leakageH: leak(TURNS.primary) },
        { name: 'secondary', pins: ['zero', 'anode'], turns: TURNS.secondary, ohms: 0.05, leakageH: leak(TURNS.secondary) },
        { name: 'base', pins: ['drive', 'common'], turns: TURNS.base, ohms: 0.2, leakageH: leak(TURNS.base) },
      ],
    },
    transistor('Q1', 'collector', 'base', 'emitter', { baseCurve: baseCurve(1e-13, [0.5e-3, 5e-3, 50e-3, 0.3]) }),
    transistor('Q2', 'base', 'base2', 'common', {
      gain: 100,
      transitS: 0.5e-9,
      baseV: 0.68,
      collectorF: 1e-12,
      collectorBaseF: COLLECTOR_BASE_F.small,
      baseF: 20e-12,
      saturationOhms: 1,
      baseOhms: 1,
      baseCurve: baseCurve(1e-14, [0.1e-3, 1e-3, 10e-3, 60e-3]),
    }),
    { kind: 'resistor', ref: 'R1', pins: ['bulk', 'base'], ohms: 1e6 },
    { kind: 'resistor', ref: 'R2', pins: ['emitter', 'common'], ohms: 4.7 },
    { kind: 'resistor', ref: 'R3', pins: ['emitter', 'base2'], ohms: 100 },
    { kind: 'capacitor', ref: 'C1', pins: ['drive', 'feed'], farads: 10e-9, ohms: 0.5 },
    { kind: 'resistor', ref: 'R4', pins: ['feed', 'base'], ohms: 470 },
    diode('D2', 'negative', 'drive', 'signal', 8e-12),
    { kind: 'capacitor', ref: 'C2', pins: ['common', 'negative'], farads: 1e-6, ohms: 0.5, initialV: 4 },
    { kind: 'resistor', ref: 'R6', pins: ['negative', 'common'], ohms: 1e3 },
    // the Zener diode as a string of two parts that both programs know: a knee of 4.3 V behind a diode
    diode('D3', 'base', 'zener', 'signal', 8e-12),
    { kind: 'dcSource', ref: 'V3', pins: ['zener', 'negative'], volts: 4.9, ohms: 8 },
    { kind: 'resistor', ref: 'R5', pins: ['clamp', 'bulk'], ohms: 100e3 },
    { kind: 'capacitor', ref: 'C3', pins: ['clamp', 'bulk'], farads: 1e-9, ohms: 1, initialV: 110 },
    diode('D4', 'collector', 'clamp', 'fast', 15e-12),
    diode('D5', 'anode', 'out', 'schottky', 300e-12),
    { kind: 'capacitor', ref: 'C4', pins: ['out', 'zero'], farads: 470e-6, ohms: 0.05, initialV: 5 },
    { kind: 'load', ref: 'RL', pins: ['out', 'zero'], draw: { ohms: choice.loadOhms ?? 10 } },
    { kind: 'capacitor', ref: 'CY', pins: ['common', 'zero'], farads: 1e-9, ohms: 1 },
  ];
  return { circuit: { title: 'invented self-oscillating 5 V adapter', earth: 'common', parts }, junctions };
}

/** Transistor cards for the reference program: same gain, transit time and lifetime. */
export const TRANSISTOR_CARDS = [
  '.model NPNQ1 NPN(IS=1e-13 BF=20 BR=1 TF=40n TR=0.8u CJE=200p CJC=20p RB=0.5 RC=0.3)',
  '.model NPNQ2 NPN(IS=1e-14 BF=100 BR=1 TF=0.5n TR=50n CJE=20p CJC=5p RB=1 RC=1)',
];
