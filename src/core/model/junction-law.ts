import type { CurvePoints } from '../solver/circuit.ts';
import { junctionPoints } from '../solver/segment-curve.ts';

/**
 * Laws of junctions by kind, for a part of `perA` ampere; a larger part has more area and less resistance. Of the size common for such
 * parts, from memory: 1 V at 1 A for silicon, 0.45 V at 5 A for a Schottky diode, 1.15 V at 5 mA for the diode of an optocoupler.
 */
const LAWS = {
  silicon: { saturationA: 7.02e-9, ideality: 1.8, seriesOhms: 0.05, perA: 1, farads: 15e-12 },
  signal: { saturationA: 2.5e-9, ideality: 1.75, seriesOhms: 0.5, perA: 0.2, farads: 4e-12 },
  schottky: { saturationA: 1.25e-6, ideality: 1.05, seriesOhms: 0.2, perA: 1, farads: 60e-12 },
  light: { saturationA: 5.6e-14, ideality: 1.8, seriesOhms: 2, perA: 0.01, farads: 20e-12 },
  lamp: { saturationA: 1e-17, ideality: 2, seriesOhms: 10, perA: 0.01, farads: 20e-12 },
} as const;
export type Junction = keyof typeof LAWS;

/** Where on its curve each chord ends, as a share of the largest current: what decides the accuracy (docs/decisions/0012-solver.md). */
const SHARES = [0.003, 0.04, 0.3, 1] as const;
/** The largest current of a chord over the rated mean current: peaks of a flyback's rectifier. */
const PEAK = 4;

export function curveFor(kind: Junction, amps: number): CurvePoints {
  const { saturationA, ideality, seriesOhms, perA } = LAWS[kind];
  const size = Math.max(amps / perA, 1e-3);
  const most = kind === 'light' || kind === 'lamp' ? perA : PEAK * amps;
  return junctionPoints(
    { saturationA: saturationA * size, ideality, seriesOhms: seriesOhms / size },
    SHARES.map((share) => share * most),
  );
}

export function capacitanceFor(kind: Junction, amps: number): number {
  const { farads, perA } = LAWS[kind];
  return farads * Math.max(1, amps / perA);
}
