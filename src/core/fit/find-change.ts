import { fisherOfTwo } from '../uncertainty/student.ts';
import { type Readings, readingsFrom } from './bin-readings.ts';
import type { Fitted } from './fit-shape.ts';
import { startValues } from './start-values.ts';

const MATERIAL_RMS = 0.004; // share of the rise by which the one curve must miss on average; house choice
const BY_CHANCE = 0.001; // over all places tried
const IN_TWO_CURVES = 7; // two curves of three parameters, and where they meet
const SPLITS = 16;
const FEWEST_IN_PART = 6;

/**
 * The time that parts the readings into two curves of their own, where that explains clearly more than the one curve does: where the cooling (or
 * a load that nobody logged) changed. Null where it does not: by chance once in a thousand logs, or by less than matters.
 */
export function findBreak(readings: Readings, { residuals, values }: Fitted): number | null {
  let best: { atS: number; error: number } | null = null;
  for (let k = 1; k < SPLITS; k += 1) {
    const at = Math.floor((k / SPLITS) * readings.t.length);
    if (at < FEWEST_IN_PART || readings.t.length - at < FEWEST_IN_PART) continue;
    const atS = readings.t[at]!;
    const error = errorOf(upTo(readings, at)) + errorOf(readingsFrom(readings, atS));
    if (best === null || error < best.error) best = { atS, error };
  }
  const freedom = residuals.length - IN_TWO_CURVES;
  if (best === null || freedom < 1) return null;
  const left = residuals.reduce((sum, one) => sum + one * one, 0) - best.error;
  const gain = left / 2 / (best.error / freedom);
  const material = Math.sqrt(Math.max(0, left) / residuals.length) > MATERIAL_RMS * Math.abs(values[1] ?? 0);
  return material && gain > fisherOfTwo(freedom, BY_CHANCE / SPLITS) ? best.atS : null;
}

function upTo({ t, y, count }: Readings, end: number): Readings {
  return { t: t.slice(0, end), y: y.slice(0, end), count: count.slice(0, end) };
}

function errorOf({ t, y, count }: Readings): number {
  const from = t[0]!;
  const span = t.at(-1)! - from || 1;
  const base = y[0]!;
  return startValues({ t: t.map((one) => (one - from) / span), y: y.map((one) => one - base), count }, 'one').error;
}

const JUMP = 0.03; // share by which what a channel of load or power shows must step from one stretch to the next; warming up drifts slower
const LOAD_STRETCHES = 40;

/** The last time at which a logged load or input power steps, or null. Stretches on both sides of the one in which it happens are compared. */
export function lastLoadStep({ t, y }: Readings): number | null {
  const stretches = Math.min(LOAD_STRETCHES, Math.floor(t.length / 2));
  if (stretches < 4) return null;
  const ends = Array.from({ length: stretches + 1 }, (_, k) => Math.floor((k * t.length) / stretches));
  const means = Array.from({ length: stretches }, (_, k) => {
    const part = y.subarray(ends[k], ends[k + 1]);
    return part.reduce((sum, one) => sum + one, 0) / part.length;
  });
  const size = Math.max(...means.map(Math.abs));
  for (let k = stretches - 1; k >= 1; k -= 1)
    if (Math.abs(means[k]! - means[k - 1]!) > JUMP * size) return t[ends[k + 1] ?? ends[k]!] ?? t.at(-1)!;
  return null;
}
