import type { Breakdown, CurvePoints } from './circuit.ts';

/** One straight stretch of a current-voltage curve: i = siemens v + amps0, from `fromV` up to the next segment. */
export interface Segment {
  readonly fromV: number;
  readonly siemens: number;
  readonly amps0: number; // current at zero volts
  /** With stored charge: ampere for each ampere of it; and the charge at which this piece begins. */
  readonly perStored?: number;
  readonly fromStored?: number;
  /** Set where reaching this segment ends the part's intended use. */
  readonly broken?: true;
}
/** Segments by rising voltage, continuous; the first begins at minus infinity. */
export type SegmentCurve = readonly Segment[];

/** Off-state conductance where none is given: 1 nS, 0.3 µA at 300 V, below any leakage that matters here. House choice. */
export const OFF_SIEMENS = 1e-9;

const line = (fromV: number, siemens: number, throughV: number, throughA: number): Segment => ({
  fromV,
  siemens,
  amps0: throughA - siemens * throughV,
});

export const straight = (siemens: number): SegmentCurve => [line(Number.NEGATIVE_INFINITY, siemens, 0, 0)];

/** Chords through the points of one half of a curve, then drawn on; begins at the knee on the leakage line. */
function chords(points: CurvePoints, leak: number): Segment[] {
  const out: Segment[] = [];
  for (let index = 0; index + 1 < points.length; index += 1) {
    const [i0, v0] = points[index]!;
    const [i1, v1] = points[index + 1]!;
    const siemens = (i1 - i0) / (v1 - v0);
    // where this chord meets what came before it
    const fromV = index === 0 ? (siemens * v0 - i0) / (siemens - leak) : v0;
    out.push(line(fromV, siemens, v0, i0));
  }
  return out;
}

/** A diode: breakdown, off, and one segment for each pair of points. */
export function diodeCurve(points: CurvePoints, leak: number, breakdown?: Breakdown): SegmentCurve {
  const off = line(Number.NEGATIVE_INFINITY, leak, 0, 0);
  const forward = chords(points, leak);
  if (breakdown === undefined) return [off, ...forward];
  const { volts, ohms, intended } = breakdown;
  const reverse = line(Number.NEGATIVE_INFINITY, 1 / ohms, -volts, -leak * volts);
  return [intended ? reverse : { ...reverse, broken: true }, { ...off, fromV: -volts }, ...forward];
}

/**
 * A base: breakdown, off, and one piece for each chord of junction voltage over stored charge; all forward pieces have the slope of the base
 * resistance and begin, with no charge, at the same knee.
 */
export function baseCurve(points: CurvePoints, ohms: number, breakdown: Breakdown): SegmentCurve {
  const [low, off] = diodeCurve(
    [
      [0, 1],
      [1, 1 + ohms],
    ],
    OFF_SIEMENS,
    breakdown,
  );
  const pieces = points.slice(1).map(([q1, v1], index): Segment => {
    const [q0, v0] = points[index]!;
    const slope = (v1 - v0) / (q1 - q0);
    const atNone = v0 - slope * q0;
    return { fromV: atNone, siemens: 1 / ohms, amps0: -atNone / ohms, perStored: -slope / ohms, fromStored: index === 0 ? 0 : q0 };
  });
  return [low!, off!, ...pieces];
}

/** The same curve both ways, as of a varistor. */
export function symmetricalCurve(points: CurvePoints, leak: number): SegmentCurve {
  const forward = chords(points, leak);
  const reverse = forward.map((one, index) => ({
    fromV: index + 1 < forward.length ? -forward[index + 1]!.fromV : Number.NEGATIVE_INFINITY,
    siemens: one.siemens,
    amps0: -one.amps0,
  }));
  return [...reverse.reverse(), line(-forward[0]!.fromV, leak, 0, 0), ...forward];
}

/** Seen from the other pin: the switch's body diode points from source to drain. */
export function reversedCurve(curve: SegmentCurve): SegmentCurve {
  return curve
    .map((one, index) => ({
      ...one,
      fromV: index + 1 < curve.length ? -curve[index + 1]!.fromV : Number.NEGATIVE_INFINITY,
      amps0: -one.amps0,
    }))
    .reverse();
}

/** A current drawn whatever the voltage, from `fromV` on; below it a resistance. */
export function sinkCurve(amps: number, fromV: number): SegmentCurve {
  return [line(Number.NEGATIVE_INFINITY, amps / fromV, 0, 0), line(fromV, 0, 0, amps)];
}

/** Thermal voltage kT/q at 27 °C, volts: the temperature at which the reference program works unless told otherwise. */
const THERMAL_V = 0.025852;

/**
 * Points of a junction's forward curve, v = n Vt ln(1 + i/Is) + i Rs, at given currents (ampere).
 * Source: the ideal diode equation with series resistance, any textbook of semiconductor devices.
 */
export function junctionPoints(
  law: { readonly saturationA: number; readonly ideality: number; readonly seriesOhms: number },
  amps: readonly number[],
): CurvePoints {
  return amps.map((i) => [i, law.ideality * THERMAL_V * Math.log(1 + i / law.saturationA) + i * law.seriesOhms] as const);
}
