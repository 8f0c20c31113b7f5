/** Times a function: warm-up, then rounds; minimum, median and spread in milliseconds. */
export interface Measured {
  readonly min: number;
  readonly median: number;
  readonly spread: number;
}

const WARM_UP = 20;

export function measure(work: () => unknown, rounds: number): Measured {
  for (let round = 0; round < WARM_UP; round += 1) work();
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const at = (share: number): number => times[Math.min(times.length - 1, Math.floor(times.length * share))]!;
  return { min: times[0]!, median: at(0.5), spread: at(0.75) - at(0.25) };
}

export function line(name: string, { min, median, spread }: Measured, reference?: { name: string; median: number }): string {
  const ratio = reference === undefined ? '' : `   ${(median / reference.median).toFixed(2)} × ${reference.name}`;
  return `${name.padEnd(44)} min ${min.toFixed(2)} ms   median ${median.toFixed(2)} ms   spread ${spread.toFixed(2)} ms${ratio}`;
}
