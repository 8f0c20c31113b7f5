import { type Bench, incrementAt, ladderBelow, put } from './increment-matrix.ts';
import type { Block } from './kernel/arena.ts';
import { powerOfTwo } from './power-of-two.ts';
import { TICK_LEVEL, type Topology } from './topology.ts';

/**
 * Exact integrals of everything quadratic in the states. Each step adds x xᵀ to the sum of its topology and step length; afterwards
 * ∫ x xᵀ dt follows from the sums, since a step of 2h is two of h: S(h) += S(2h) + Φ S(2h) Φᵀ, down to where a series ends it.
 * Means, rms values, losses and delivered energy are then sums over that matrix, however many are asked for.
 */
export function addMoment(bench: Bench, topology: Topology, step: number, x: Block): void {
  let sums = topology.moments[step];
  if (sums === undefined) {
    sums = bench.arena.block(bench.rows * bench.n);
    topology.moments[step] = sums;
  }
  topology.counted = true;
  bench.arena.outer(sums, bench.rows, bench.n, x);
}

/** Forgets the sums, and keeps their room. */
export function clearMoments(topology: Topology): void {
  if (!topology.counted) return;
  topology.counted = false;
  for (const sums of topology.moments) sums?.data.fill(0);
}

/** Terms of the series at the lowest level; the norm of the step there is at most 1/8 for the two-sided motion. */
const TERMS = 9;
/** Places on the bench beside those of the chain. */
const PLACE = { half: 3, other: 4, turned: 5 } as const;

/** ∫ x xᵀ dt over all steps taken in one topology, n by n, in unit² seconds; null when none were. */
export function integralOfMoments(bench: Bench, topology: Topology): Float64Array | null {
  const { chain, moments } = topology;
  if (!topology.counted) return null;
  const { arena, n, rows } = bench;
  const { lowest, first, a } = chain;
  const below = lowest < first ? ladderBelow(bench, chain) : null;
  const [half, other, turned] = [PLACE.half, PLACE.other, PLACE.turned].map((place) => bench.at(place)) as [Block, Block, Block];
  let sum = new Float64Array(rows * n);
  for (let level = TICK_LEVEL + moments.length - 1; ; level -= 1) {
    const steps = level >= TICK_LEVEL ? moments[level - TICK_LEVEL] : undefined;
    if (steps !== undefined) addLower(sum, steps.data, n, rows);
    if (level === lowest) break;
    // sum += Φ sum Φᵀ with Φ = I + F of the level below
    const f = below !== null && level <= first ? below(level - 1) : incrementAt(bench, chain, level - 1);
    other.data.set(sum);
    arena.product(f, rows, n, other, other, half);
    turn(f.data, n, rows, turned.data);
    arena.product(half, rows, n, turned, half, other);
    for (let i = 0; i < sum.length; i += 1) sum[i]! += other.data[i]!;
  }
  const h = powerOfTwo(lowest);
  const total = new Float64Array(n * n);
  put(a, n, h, turned);
  // Σ h^(k+1) / (k+1)! L^k S, L S = A S + S Aᵀ, and S is symmetrical
  for (let term = 1; ; term += 1) {
    for (let j = 0; j < n; j += 1) for (let i = 0; i < n; i += 1) total[i * n + j]! += (sum[j * rows + i]! * h) / term;
    if (term === TERMS) return total;
    other.data.set(sum);
    arena.product(turned, rows, n, other, bench.zero, half);
    const next = new Float64Array(rows * n);
    for (let j = 0; j < n; j += 1)
      for (let i = 0; i < n; i += 1) next[j * rows + i] = (half.data[j * rows + i]! + half.data[i * rows + j]!) / term;
    sum = next;
  }
}

function addLower(out: Float64Array, lower: Float64Array, n: number, rows: number): void {
  for (let j = 0; j < n; j += 1)
    for (let i = j; i < n; i += 1) {
      const value = lower[j * rows + i]!;
      out[j * rows + i]! += value;
      if (j < i) out[i * rows + j]! += value;
    }
}

/** out = the transposed of f. */
function turn(f: Float64Array, n: number, rows: number, out: Float64Array): void {
  for (let j = 0; j < n; j += 1) for (let i = 0; i < n; i += 1) out[i * rows + j] = f[j * rows + i]!;
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
