/** How long a soak of a million readings takes to be binned and fitted, beside one pass that only adds the readings up. */

import { noiseFor } from '../scripts/demo/noise.ts';
import { heatingCurve } from '../src/core/fit/heating-curve.ts';
import { line } from './measure.ts';

const READINGS = 1_000_000;
const SECONDS = 7200;
const ROUNDS = 7;

const noise = noiseFor('bench', 'million readings');
const times = Float64Array.from({ length: READINGS }, (_, i) => (SECONDS * i) / READINGS);
const values = times.map((t) => 338.15 - 30 * Math.exp(-t / 1500) - 12 * Math.exp(-t / 150) + 0.2 * noise.normal());
const timed = (work: () => unknown): { min: number; median: number; spread: number } => {
  work();
  const ms = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return { min: ms[0]!, median: ms[ROUNDS >> 1]!, spread: ms.at(-1)! - ms[0]! };
};
const sum = timed(() => values.reduce((total, one, i) => total + one * times[i]!, 0));
console.log(line('adding up a million readings (reference)', sum));
console.log(
  line(
    'a million readings binned and fitted, target under 1 s',
    timed(() => heatingCurve({ times, values, ambient: null, load: null, lastDigit: 0.1, withinK: 1 })),
    { name: 'adding up', median: sum.median },
  ),
);
