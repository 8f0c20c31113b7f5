import type { Circuit, ControlLaw, Part } from '../../src/core/solver/circuit.ts';
import { junctionPoints } from '../../src/core/solver/segment-curve.ts';

/** Junction laws, shared with the reference program's own diode model. Invented, of the size common for such parts. */
export const JUNCTIONS = {
  bridge: { saturationA: 7.02e-9, ideality: 1.8, seriesOhms: 0.034, most: 2 },
  fast: { saturationA: 7.02e-9, ideality: 1.8, seriesOhms: 0.05, most: 1 },
  schottky: { saturationA: 1e-5, ideality: 1.05, seriesOhms: 0.03, most: 8 },
  signal: { saturationA: 2.5e-9, ideality: 1.75, seriesOhms: 0.5, most: 0.3 },
  light: { saturationA: 5.6e-14, ideality: 1.8, seriesOhms: 2, most: 0.01 },
} as const;
export type Junction = keyof typeof JUNCTIONS;

/** Where on its curve each chord ends, as a share of the largest current. */
const SHARES = [0.003, 0.04, 0.3, 1];

export const curveOf = (name: Junction) => {
  const { most, ...law } = JUNCTIONS[name];
  return junctionPoints(
    law,
    SHARES.map((share) => share * most),
  );
};

export interface AdapterChoice {
  readonly input?: { readonly dcV: number } | { readonly rmsV: number; readonly hertz: number; readonly bulkV: number };
  readonly loadOhms?: number;
  readonly law?: Partial<Extract<ControlLaw, { type: 'peakCurrent' }>>;
  /** Another law altogether. */
  readonly control?: ControlLaw;
  /** Capacitor of the controller's supply, and the resistor that starts it. */
  readonly supplyF?: number;
  readonly startOhms?: number;
  readonly outputV?: number;
  readonly y?: number;
  readonly lockout?: { readonly startV: number; readonly stopV: number; readonly idleA: number; readonly runningA: number };
}

export interface Described {
  readonly circuit: Circuit;
  /** Junction law of each diode or light-emitting diode, by ref. */
  readonly junctions: Readonly<Record<string, Junction>>;
}

const TURNS = { primary: 78, secondary: 6, auxiliary: 15 } as const;
const PRIMARY_H = 1.2e-3;
/** Coupling 0.985 between all windings: leakage is the rest, on each winding's own side. */
const COUPLING = 0.985;

/** An invented 5 V 2 A adapter: about 30 real parts, 41 elements. */
export function adapter(choice: AdapterChoice = {}): Described {
  const parts: Part[] = [];
  const junctions: Record<string, Junction> = {};
  const resistor = (ref: string, a: string, b: string, ohms: number): void =>
    void parts.push({ kind: 'resistor', ref, pins: [a, b], ohms });
  const capacitor = (ref: string, a: string, b: string, farads: number, ohms: number, initialV = 0): void =>
    void parts.push({ kind: 'capacitor', ref, pins: [a, b], farads, ohms, initialV });
  const diode = (ref: string, a: string, k: string, law: Junction, junctionF: number): void => {
    parts.push({ kind: 'diode', ref, pins: [a, k], forward: curveOf(law), junctionF });
    junctions[ref] = law;
  };
  const input = choice.input ?? { dcV: 325 };
  if ('dcV' in input) {
    parts.push({ kind: 'dcSource', ref: 'V1', pins: ['bulk', 'common'], volts: input.dcV, ohms: 0.1 });
    resistor('R20', 'common', 'earth', 0.01);
  } else {
    parts.push({ kind: 'mains', ref: 'V1', pins: ['line', 'earth'], rmsV: input.rmsV, hertz: input.hertz, phaseDeg: 0, ohms: 0.4 });
    resistor('R21', 'line', 'fused', 0.1);
    resistor('R22', 'fused', 'bridge', 8);
    diode('D1', 'bridge', 'bulk', 'bridge', 20e-12);
    diode('D2', 'earth', 'bulk', 'bridge', 20e-12);
    diode('D3', 'common', 'bridge', 'bridge', 20e-12);
    diode('D4', 'common', 'earth', 'bridge', 20e-12);
    capacitor('C1', 'bulk', 'common', 15e-6, 0.5, input.bulkV);
  }
  const leak = (turns: number): number => (1 - COUPLING) * PRIMARY_H * (turns / TURNS.primary) * (turns / TURNS.primary);
  parts.push({
    kind: 'transformer',
    ref: 'T1',
    magnetisingH: COUPLING * PRIMARY_H,
    coreOhms: 3e5,
    windings: [
      { name: 'primary', pins: ['bulk', 'drain'], turns: TURNS.primary, ohms: 1.5, leakageH: leak(TURNS.primary) },
      { name: 'secondary', pins: ['zero', 'anode'], turns: TURNS.secondary, ohms: 0.012, leakageH: leak(TURNS.secondary) },
      { name: 'auxiliary', pins: ['common', 'aux'], turns: TURNS.auxiliary, ohms: 0.1, leakageH: leak(TURNS.auxiliary) },
    ],
  });
  resistor('R1', 'clamp', 'bulk', 39e3);
  capacitor('C2', 'clamp', 'bulk', 2.2e-9, 1, 120);
  diode('D6', 'drain', 'clamped', 'fast', 15e-12);
  resistor('R2', 'clamped', 'clamp', 47);
  parts.push({
    kind: 'switch',
    ref: 'Q1',
    pins: ['drain', 'sense'],
    onOhms: 3.5,
    outputF: 45e-12,
    body: curveOf('bridge'),
    breakdown: { volts: 2000, ohms: 50 },
  });
  junctions['Q1'] = 'bridge';
  resistor('R3', 'sense', 'common', 1);
  diode('D7', 'aux', 'supply', 'signal', 8e-12);
  capacitor('C3', 'supply', 'common', choice.supplyF ?? 4.7e-6, 0.5, 14);
  resistor('R4', 'bulk', 'supply', choice.startOhms ?? 2e6);
  parts.push({ kind: 'dcSource', ref: 'V2', pins: ['five', 'common'], volts: 5, ohms: 1 });
  resistor('R23', 'five', 'feedback', 20e3);
  capacitor('C4', 'feedback', 'common', 1e-9, 1);
  parts.push({
    kind: 'controller',
    ref: 'U1',
    drives: 'Q1',
    ground: 'common',
    supply: 'supply',
    lockout: choice.lockout ?? { startV: 12, stopV: 8, idleA: 20e-6, runningA: 1.2e-3 },
    law: choice.control ?? {
      type: 'peakCurrent',
      sense: 'sense',
      limitV: 0.85,
      blankS: 300e-9,
      delayS: 30e-9,
      feedback: 'feedback',
      offsetV: 0.6,
      divider: 3.4,
      leastV: 0.1,
      burst: { stopV: 0.95, goV: 1.05 },
      hertz: 65e3,
      dutyMost: 0.7,
      ...choice.law,
    },
  });
  diode('D5', 'anode', 'out', 'schottky', 300e-12);
  resistor('R5', 'anode', 'snub', 10);
  capacitor('C5', 'snub', 'out', 1e-9, 0.1);
  capacitor('C6', 'out', 'zero', 680e-6, 0.03, choice.outputV ?? 4.9);
  capacitor('C7', 'out', 'zero', 10e-6, 0.01, choice.outputV ?? 4.9);
  parts.push({ kind: 'load', ref: 'RL', pins: ['out', 'zero'], draw: { ohms: choice.loadOhms ?? 2.5 } });
  resistor('R6', 'out', 'reference', 10e3);
  resistor('R7', 'reference', 'zero', 10e3);
  resistor('R8', 'out', 'light', 2.2e3);
  resistor('R9', 'out', 'cathode', 2.2e3);
  capacitor('C8', 'loop', 'reference', 100e-9, 1);
  resistor('R10', 'cathode', 'loop', 1e3);
  capacitor('C9', 'cathode', 'zero', 20e-12, 1);
  parts.push({
    kind: 'shuntRegulator',
    ref: 'U3',
    cathode: 'cathode',
    anode: 'zero',
    reference: 'reference',
    refV: 2.495,
    siemens: 1,
    leastV: 1.9,
    leastOhms: 10,
  });
  const forward = curveOf('light');
  parts.push({
    kind: 'optocoupler',
    ref: 'U2',
    led: ['light', 'cathode'],
    transistor: ['feedback', 'common'],
    forward,
    collectorA: forward.map(([amps]) => amps),
    poleHz: 100e3,
    saturationOhms: 200,
  });
  junctions['U2'] = 'light';
  capacitor('CY', 'common', 'zero', choice.y ?? 1e-9, 1);
  capacitor('C10', 'drain', 'zero', 30e-12, 10);
  parts.push({ kind: 'bodyNetwork', ref: 'B1', pins: ['zero', 'earth'] });
  return { circuit: { title: 'invented 5 V adapter', earth: 'earth', parts }, junctions };
}
