import { multiply } from './dense.ts';
import { incrementAt } from './increment-matrix.ts';
import { powerOfTwo } from './power-of-two.ts';
import { TICK_LEVEL, type Topology } from './topology.ts';

/**
 * Exact integrals of everything quadratic in the states. Each step adds x xᵀ to the sum of its topology and step length; afterwards
 * ∫ x xᵀ dt follows from the sums, since a step of 2h is two of h: S(h) += S(2h) + Φ S(2h) Φᵀ, down to where a series ends it.
 * Means, rms values, losses and delivered energy are then sums over that matrix, however many are asked for.
 */
export function addMoment(topology: Topology, step: number, x: Float64Array, n: number): void {
  const sums = topology.moments[step] ?? new Float64Array((n * (n + 1)) / 2);
  topology.moments[step] = sums;
  let at = 0;
  for (let i = 0; i < n; i += 1) {
    const factor = x[i]!;
    for (let j = 0; j <= i; j += 1) {
      sums[at]! += factor * x[j]!;
      at += 1;
    }
  }
}

/** Terms of the series at the lowest level; the norm of the step there is at most 1/8 for the two-sided motion. */
const TERMS = 9;

/** ∫ x xᵀ dt over all steps taken in one topology, n by n, in unit² seconds; null when none were. */
export function integralOfMoments(topology: Topology): Float64Array | null {
  const { chain, moments } = topology;
  const { n, lowest, a } = chain;
  if (moments.length === 0) return null;
  const size = n * n;
  let sum = new Float64Array(size);
  let half = new Float64Array(size);
  let other = new Float64Array(size);
  const increment = new Float64Array(size);
  for (let level = TICK_LEVEL + moments.length - 1; ; level -= 1) {
    const steps = level >= TICK_LEVEL ? moments[level - TICK_LEVEL] : undefined;
    if (steps !== undefined) addPacked(sum, steps, n);
    if (level === lowest) break;
    // other = Φ sum Φᵀ with Φ = I + F of the level below
    const f = incrementAt(chain, level - 1);
    multiply(f, sum, n, half);
    for (let i = 0; i < size; i += 1) half[i]! += sum[i]!;
    timesTransposed(half, f, n, other);
    for (let i = 0; i < size; i += 1) other[i]! += half[i]!;
    for (let i = 0; i < size; i += 1) sum[i]! += other[i]!;
  }
  const h = powerOfTwo(lowest);
  const total = new Float64Array(size);
  // Σ h^(k+1) / (k+1)! L^k S, L S = A S + S Aᵀ
  for (let term = 1; ; term += 1) {
    for (let i = 0; i < size; i += 1) total[i]! += (sum[i]! * h) / term;
    if (term === TERMS) return total;
    multiply(a, sum, n, increment);
    timesTransposed(sum, a, n, other);
    half = other;
    for (let i = 0; i < size; i += 1) half[i] = ((increment[i]! + other[i]!) * h) / term;
    other = sum;
    sum = half;
    half = new Float64Array(size);
  }
}

function addPacked(out: Float64Array, packed: Float64Array, n: number): void {
  let at = 0;
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      out[i * n + j]! += packed[at]!;
      if (j < i) out[j * n + i]! += packed[at]!;
      at += 1;
    }
}

/** out = a bᵀ. */
function timesTransposed(a: Float64Array, b: Float64Array, n: number, out: Float64Array): void {
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j < n; j += 1) {
      let sum = 0;
      for (let k = 0; k < n; k += 1) sum += a[i * n + k]! * b[j * n + k]!;
      out[i * n + j] = sum;
    }
}

/** rowᵀ M other: the integral of one quantity times another. */
export function integralOf(row: Float64Array, m: Float64Array, other: Float64Array): number {
  const n = row.length;
  let total = 0;
  for (let i = 0; i < n; i += 1) {
    const factor = row[i]!;
    if (factor === 0) continue;
    let sum = 0;
    for (let j = 0; j < n; j += 1) sum += m[i * n + j]! * other[j]!;
    total += factor * sum;
  }
  return total;
}
