/** Readings over time, or their means in bins of neighbours. Seconds and kelvin; `count` is how many readings a mean stands for. */
export interface Readings {
  readonly t: Float64Array;
  readonly y: Float64Array;
  readonly count: Float64Array;
}

export const MOST_BINS = 2000;

/**
 * Block means of (nearly) equally many readings, times and values alike; readings that are no number are left out. Fewer than `most` stay as
 * they are. A mean over a stretch short against the time constant lies on the curve: its error is (stretch / time constant)² / 24 of what is left to rise.
 */
export function binReadings(times: ArrayLike<number>, values: ArrayLike<number>, most: number = MOST_BINS): Readings {
  const rows = times.length;
  let usable = 0;
  for (let row = 0; row < rows; row += 1) if (Number.isFinite(values[row]) && Number.isFinite(times[row])) usable += 1;
  const bins = Math.min(usable, most);
  const t = new Float64Array(bins);
  const y = new Float64Array(bins);
  const count = new Float64Array(bins);
  let seen = 0;
  for (let row = 0; row < rows; row += 1) {
    const value = values[row]!;
    const time = times[row]!;
    if (!Number.isFinite(value) || !Number.isFinite(time)) continue;
    const bin = Math.floor((seen * bins) / usable);
    seen += 1;
    const n = count[bin]! + 1;
    count[bin] = n;
    t[bin]! += (time - t[bin]!) / n; // running means: sums of a million large times would lose digits
    y[bin]! += (value - y[bin]!) / n;
  }
  return { t, y, count };
}

/** The readings from one time on. */
export function readingsFrom({ t, y, count }: Readings, fromS: number): Readings {
  let first = 0;
  while (first < t.length && t[first]! < fromS) first += 1;
  return { t: t.slice(first), y: y.slice(first), count: count.slice(first) };
}
