import type { CaseInput } from '../../src/core/evidence/case.ts';
import { digestOfBytes } from '../../src/core/result/digest.ts';
import { DEMO_INSTRUMENTS, displayed } from './bench-instruments.ts';
import type { SweepRow } from './file-layouts.ts';
import { operatingAt, type UnitModel } from './unit-model.ts';

/** One demo case: the document and its files. */
export interface DemoCase {
  readonly document: CaseInput;
  readonly files: Readonly<Record<string, Uint8Array>>;
}

export const BENCH_MAINS = { mains: '230.4 V', frequency: '50 Hz', supply: 'direct', ambient: '25.0 °C' } as const;
export const BENCH_V = 230.4;
export const BENCH_HZ = 50;
export const ROOM_C = 25;

export function demoDay(date: string): NonNullable<CaseInput['days']>[number] {
  return {
    id: 'day-1',
    date,
    uses: {
      outputCurrent: 'load-1',
      outputVoltage: 'load-1',
      inputPower: 'power-1',
      mains: 'meter-1',
      touchCurrent: 'meter-1',
      residualVoltage: 'probe-1',
      capacitance: 'meter-1',
      insulation: 'meter-1',
      ambient: 'meter-1',
      temperature: 'thermo-1',
      distance: 'caliper-1',
    },
    under: { ...BENCH_MAINS },
  };
}

export function demoInstruments(): NonNullable<CaseInput['instruments']> {
  return structuredClone(DEMO_INSTRUMENTS);
}

const DWELL_S = 8;
const GIVES_UP_BELOW = 0.55; // share of the set point below which the unit stops and tries again

/** A load sweep as the bench would take it: currents in steps, the unit's model, and the instruments' own errors. */
export function sweepRows(
  model: UnitModel,
  setV: number,
  name: string,
  currentsA: readonly number[],
  mains: { readonly v: number; readonly hz: number } = { v: BENCH_V, hz: BENCH_HZ },
): SweepRow[] {
  const rows: SweepRow[] = [];
  for (const [index, currentA] of currentsA.entries()) {
    const point = operatingAt(model, setV, currentA, mains.v, mains.hz);
    if (point.voltageV < GIVES_UP_BELOW * setV) break;
    const read = (quantity: string, truth: number, of: Parameters<typeof displayed>[3]): number =>
      displayed(model.seed, `${name} ${quantity} ${index}`, truth, of);
    rows.push({
      seconds: index * DWELL_S,
      current: read('current', currentA, { instrument: 'load-1', role: 'outputCurrent', kind: 'current', step: 0.001 }),
      voltage: read('voltage', point.voltageV, { instrument: 'load-1', role: 'outputVoltage', kind: 'voltage', step: 0.001 }),
      power: read('power', point.inputW, { instrument: 'power-1', role: 'inputPower', kind: 'power', step: 0.01 }),
    });
  }
  // an idle current reads as zero or one digit, never below
  return rows.map((row) => ({ ...row, current: Math.max(0, row.current) }));
}

export function steps(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => from + ((to - from) * index) / (count - 1));
}

/** A reading as text in the unit and digits of the display. */
export function readingText(
  model: UnitModel,
  name: string,
  truth: number,
  of: Parameters<typeof displayed>[3],
  show: { factor: number; unit: string; digits: number },
): string {
  return `${(displayed(model.seed, name, truth, of) / show.factor).toFixed(show.digits)} ${show.unit}`;
}

export const millimetres = (model: UnitModel, name: string, truthMm: number): string =>
  readingText(
    model,
    name,
    truthMm / 1000,
    { instrument: 'caliper-1', role: 'distance', kind: 'length', step: 1e-5 },
    { factor: 1e-3, unit: 'mm', digits: 2 },
  );

export const degrees = (model: UnitModel, name: string, truthC: number): string => {
  const KELVIN = 273.15;
  const shown = displayed(model.seed, name, truthC, { instrument: 'thermo-1', role: 'temperature', kind: 'temperature', step: 0.1 });
  return `${(shown + KELVIN - KELVIN).toFixed(1)} °C`;
};

export const milliamperes = (model: UnitModel, name: string, truthA: number): string =>
  readingText(
    model,
    name,
    truthA,
    { instrument: 'meter-1', role: 'touchCurrent', kind: 'current', step: 1e-6 },
    { factor: 1e-3, unit: 'mA', digits: 3 },
  );

export const nanofarads = (model: UnitModel, name: string, truthF: number): string =>
  readingText(
    model,
    name,
    truthF,
    { instrument: 'meter-1', role: 'capacitance', kind: 'capacitance', step: 1e-11 },
    { factor: 1e-9, unit: 'nF', digits: 2 },
  );

/** An attached file as the case records it. */
export function attach(
  id: string,
  path: string,
  bytes: Uint8Array,
  media = 'text/csv',
  settled?: Record<string, string>,
): NonNullable<CaseInput['files']>[number] {
  return { id, path, sha256: digestOfBytes(bytes), bytes: bytes.length, media, ...(settled === undefined ? {} : { settled }) };
}

export function text(content: string): Uint8Array {
  return new TextEncoder().encode(content);
}
