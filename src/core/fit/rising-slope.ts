import type { Readings } from './bin-readings.ts';

const PARTS = 4; // of the last stretch looked at
const CLEARLY = 3; // standard uncertainties by which a slope must exceed the one before
const FEWEST = 3; // readings in a part
const LOOKED_AT = 0.5; // share of the log, its end

export interface Slope {
  /** K/s. */
  readonly value: number;
  readonly u: number;
}

/** Slope of a straight line through readings, with its standard uncertainty from the scatter about that line. */
export function slopeOf({ t, y, count }: Readings, from: number, to: number): Slope {
  let n = 0;
  let tMean = 0;
  let yMean = 0;
  for (let i = from; i < to; i += 1) {
    n += count[i]!;
    tMean += (count[i]! * (t[i]! - tMean)) / n;
    yMean += (count[i]! * (y[i]! - yMean)) / n;
  }
  let stt = 0;
  let sty = 0;
  let syy = 0;
  for (let i = from; i < to; i += 1) {
    const dt = t[i]! - tMean;
    const dy = y[i]! - yMean;
    stt += count[i]! * dt * dt;
    sty += count[i]! * dt * dy;
    syy += count[i]! * dy * dy;
  }
  if (!(stt > 0)) return { value: 0, u: Number.POSITIVE_INFINITY };
  const value = sty / stt;
  const left = Math.max(0, syy - value * sty);
  return { value, u: to - from > 2 ? Math.sqrt(left / (to - from - 2) / stt) : Number.POSITIVE_INFINITY };
}

/** Slopes of four equal parts of the later half of the log, earliest first. */
export function lastSlopes(readings: Readings): Slope[] {
  const n = readings.t.length;
  const first = Math.floor(n * (1 - LOOKED_AT));
  const edge = (k: number): number => first + Math.floor(((n - first) * k) / PARTS);
  return Array.from({ length: PARTS }, (_, k) => slopeOf(readings, edge(k), edge(k + 1)));
}

/**
 * True when the temperature climbs faster and faster at the end of the log: the slope grew clearly, twice in a row. A body that heats towards an
 * end does the opposite, so this is a loss that grows with temperature, or a load that was raised; either way the test has to end.
 */
export function isRising(readings: Readings): boolean {
  if (readings.t.length < (PARTS * FEWEST) / LOOKED_AT) return false;
  const slopes = lastSlopes(readings).slice(-3);
  return slopes.every(({ value, u }, k) => {
    const before = slopes[k - 1];
    if (before === undefined) return true;
    return value > 0 && value - before.value > CLEARLY * Math.sqrt(u * u + before.u * before.u);
  });
}
