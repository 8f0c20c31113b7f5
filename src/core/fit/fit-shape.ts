import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { inverse, Matrix } from 'ml-matrix';
import type { Readings } from './bin-readings.ts';
import { heightAt, NUMBER_OF, type Shape, slopesAt } from './heating-model.ts';
import { startValues } from './start-values.ts';

/** A fitted curve in seconds and kelvin. Time counts from the first reading used. */
export interface Fitted {
  readonly shape: Shape;
  /** [end, rise, time constant] or [end, rise, time constant, fast rise, fast time constant]. */
  readonly values: readonly number[];
  /** Of `values`, in the same order; scatter of single readings and their correlation are in it. */
  readonly covariance: readonly (readonly number[])[];
  readonly fromS: number;
  readonly toS: number;
  readonly readings: number;
  readonly bins: number;
  readonly freedom: number;
  /** Standard deviation of one reading about the curve, K. */
  readonly scatter: number;
  /** Correlation of neighbouring residuals. */
  readonly correlation: number;
  /** Weighted residuals, each worth one reading, K. */
  readonly residuals: Float64Array;
  /** Height at a time in seconds of the log, K. */
  readonly at: (seconds: number) => number;
}

const ROUNDS = 20; // from a start on a grid the fit has settled after a few
const BOUND = 1e6; // in scaled units: heights of a million times the rise are no curve
const LOG_BOUND = 6; // time constants between 1/400 and 400 spans
const COUNTS_AS_CORRELATED = 2; // standard deviations of the correlation of white noise, 1/√n

/** Weighted least squares by Levenberg and Marquardt; null when the readings do not pin the parameters down at all. `lastDigit` in K. */
export function fitShape(readings: Readings, shape: Shape, lastDigit: number): Fitted | null {
  const { t, y, count } = readings;
  const size = NUMBER_OF[shape];
  if (t.length < size + 2) return null;
  const fromS = t[0]!;
  const span = t.at(-1)! - fromS;
  const base = y[0]!;
  const reach = y.reduce((most, one) => Math.max(most, Math.abs(one - base)), 0);
  if (!(span > 0) || !(reach > 0)) return null;
  const scaled: Readings = { t: t.map((one) => (one - fromS) / span), y: y.map((one) => (one - base) / reach), count };
  const start = startValues(scaled, shape);
  if (!Number.isFinite(start.error)) return null;
  const bounds = Array.from({ length: size }, (_, k) => (k > 0 && k % 2 === 0 ? LOG_BOUND : BOUND));
  // Weights are put into readings and curve, addressed by their number: the package's own option weighs its error one way and its steps the other.
  const weight = scaled.count.map(Math.sqrt);
  const { parameterValues: p } = levenbergMarquardt(
    { x: Float64Array.from(scaled.t, (_, i) => i), y: scaled.y.map((one, i) => one * weight[i]!) },
    (values) => {
      const curve = heightAt(values);
      return (i) => weight[i]! * curve(scaled.t[i]!);
    },
    {
      initialValues: start.parameters,
      minValues: bounds.map((bound) => -bound),
      maxValues: bounds,
      maxIterations: ROUNDS,
      errorTolerance: 0,
      jacobianFunction: (values: number[]) => {
        const slopes = slopesAt(values);
        return (i) => slopes(scaled.t[i]!).map((slope) => weight[i]! * slope);
      },
    },
  );
  const height = heightAt(p);
  const residuals = scaled.y.map((one, i) => (one - height(scaled.t[i]!)) * reach * Math.sqrt(count[i]!));
  const freedom = t.length - size;
  const squares = residuals.reduce((sum, one) => sum + one * one, 0);
  const scatter = Math.max(Math.sqrt(squares / freedom), lastDigit / Math.sqrt(12));
  const correlation = correlationOf(residuals);
  const spread = correlation > COUNTS_AS_CORRELATED / Math.sqrt(t.length) ? (1 + correlation) / (1 - correlation) : 1;
  const unit = inverseOfInformation(scaled, p);
  if (unit === null) return null;
  const scale = p.map((value, k) => (k > 0 && k % 2 === 0 ? span * Math.exp(value) : reach));
  const variance = ((scatter * scatter) / (reach * reach)) * spread;
  const covariance = unit.map((line, a) => line.map((one, b) => one * variance * scale[a]! * scale[b]!));
  if (covariance.some((line, k) => !(line[k]! > 0) || !Number.isFinite(line[k]))) return null;
  const values = p.map((value, k) => (k === 0 ? base + reach * value : k % 2 === 0 ? span * Math.exp(value) : reach * value));
  return {
    shape,
    values,
    covariance,
    fromS,
    toS: t.at(-1)!,
    readings: count.reduce((sum, one) => sum + one, 0),
    bins: t.length,
    freedom,
    scatter,
    correlation,
    residuals,
    at: (seconds) => base + reach * height((seconds - fromS) / span),
  };
}

function correlationOf(residuals: Float64Array): number {
  let squares = 0;
  let products = 0;
  for (let i = 0; i < residuals.length; i += 1) {
    squares += residuals[i]! * residuals[i]!;
    if (i > 0) products += residuals[i]! * residuals[i - 1]!;
  }
  return squares === 0 ? 0 : products / squares;
}

/** (Jᵀ W J)⁻¹ in scaled units; null when singular. */
export function inverseOfInformation({ t, count }: Pick<Readings, 't' | 'count'>, p: readonly number[]): number[][] | null {
  const slopes = slopesAt(p);
  const information = Matrix.zeros(p.length, p.length);
  for (let i = 0; i < t.length; i += 1) {
    const g = slopes(t[i]!);
    for (let a = 0; a < p.length; a += 1)
      for (let b = 0; b < p.length; b += 1) information.set(a, b, information.get(a, b) + count[i]! * g[a]! * g[b]!);
  }
  try {
    return inverse(information).to2DArray();
  } catch {
    return null; // singular: the readings leave a parameter open
  }
}
