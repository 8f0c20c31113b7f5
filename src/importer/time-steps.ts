/** How a row of times runs: evenly, unevenly, backwards, or not at all. */
export interface TimeRun {
  /** The even step in the unit of the times; null when uneven. */
  readonly step: number | null;
  readonly missing: number;
  readonly restarts: number;
  /** The longest stretch of equal times, in rows, and the commonest-sized one. */
  readonly longestStill: number;
  readonly typicalStill: number;
}

const EVEN_TOLERANCE = 0.01; // how far a row may stand off an even grid, in steps; house choice
const ROUNDING_TOLERANCE = 0.001; // how far the last row may move, in steps, when the step is written with fewer digits
const MOST_DIGITS = 12; // significant digits of a step; a double holds 15
const ROUNDING_UNIT = 2 ** -50; // of the size of the times: noise of subtracting doubles

export function toTimeRun(times: Float64Array): TimeRun {
  const n = times.length;
  let missing = 0;
  let restarts = 0;
  let stretches = 0;
  let longest = 0;
  let here = 0;
  let previous = Number.NaN;
  for (let i = 0; i < n; i++) {
    const time = times[i]!;
    if (Number.isNaN(time)) {
      missing++;
      continue;
    }
    if (time < previous) restarts++;
    if (time === previous) here++;
    else {
      stretches++;
      here = 1;
    }
    if (here > longest) longest = here;
    previous = time;
  }
  const typicalStill = stretches === 0 ? 0 : (n - missing) / stretches;
  const step = missing === 0 && restarts === 0 && longest === 1 && n >= 2 ? findEvenStep(times) : null;
  return { step, missing, restarts, longestStill: longest, typicalStill };
}

function findEvenStep(times: Float64Array): number | null {
  const n = times.length;
  const first = times[0]!;
  const mean = (times[n - 1]! - first) / (n - 1);
  const allowed = mean * EVEN_TOLERANCE + Math.max(Math.abs(first), Math.abs(times[n - 1]!)) * ROUNDING_UNIT;
  for (let i = 1; i < n; i++) if (!(Math.abs(times[i]! - (first + i * mean)) <= allowed)) return null;
  for (let digits = 1; digits <= MOST_DIGITS; digits++) {
    const written = Number(mean.toPrecision(digits));
    if (Math.abs(written - mean) * (n - 1) <= mean * ROUNDING_TOLERANCE) return written;
  }
  return mean;
}
