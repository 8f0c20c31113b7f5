import { noiseFor } from '../../scripts/demo/noise.ts';
import { heatingCurve, type LoggedPlace } from '../../src/core/fit/heating-curve.ts';

/** An invented body: where it is going, how it gets there. Seconds, kelvin. */
export interface Truth {
  readonly end: number;
  readonly at: (seconds: number) => number;
}

export const ROOM_K = 298.15;

/** T = end - Σ rise exp(-t / τ). */
export function body(end: number, ...parts: readonly (readonly [rise: number, timeConstant: number])[]): Truth {
  return { end, at: (t) => end - parts.reduce((sum, [rise, tau]) => sum + rise * Math.exp(-t / tau), 0) };
}

export interface LogPlan {
  readonly seconds: number;
  readonly readings: number;
  readonly noiseK: number;
  readonly seed: string;
}

export function logOf(at: (seconds: number) => number, plan: LogPlan, more: Partial<LoggedPlace> = {}): LoggedPlace {
  const noise = noiseFor('heating curve', plan.seed);
  const times = Float64Array.from({ length: plan.readings }, (_, i) => (plan.seconds * i) / (plan.readings - 1));
  return {
    times,
    values: times.map((t) => at(t) + plan.noiseK * noise.normal()),
    ambient: null,
    load: null,
    lastDigit: 0,
    withinK: 1,
    ...more,
  };
}

export const fitOf = (at: (seconds: number) => number, plan: LogPlan, more: Partial<LoggedPlace> = {}): ReturnType<typeof heatingCurve> =>
  heatingCurve(logOf(at, plan, more));
