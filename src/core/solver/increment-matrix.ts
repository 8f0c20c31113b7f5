import { multiply } from './dense.ts';
import { powerOfTwo } from './power-of-two.ts';

/**
 * Exact steps of x' = A x: x(t + h) = x(t) + F x(t), F = exp(A h) - I, for h = 2^level seconds. Doubling the step is
 * F(2h) = 2 F(h) + F(h)²; keeping F rather than exp(A h) keeps the slow motions exact beside picosecond ones.
 * Source: scaling and squaring, any text on the matrix exponential.
 */
export interface IncrementChain {
  readonly n: number;
  /** Level of the first matrix; there the norm of the balanced A h is at most `SMALL`. */
  readonly lowest: number;
  readonly matrices: Float64Array[];
  readonly a: Float64Array;
}

/** Norm below which the series is summed: with eight terms it is exact to the last bit, (1/16)^8 / 9! = 6e-16. */
const SMALL = 1 / 16;
const TERMS = 8;
/** Sweeps of balancing; three settle what matters. */
const SWEEPS = 4;

/** Powers of two that bring rows and columns of A to like size; rounding-free (Osborne's method). */
function balance(a: Float64Array, n: number): Float64Array {
  const scale = new Float64Array(n).fill(1);
  for (let sweep = 0; sweep < SWEEPS; sweep += 1) {
    for (let i = 0; i < n; i += 1) {
      let row = 0;
      let column = 0;
      for (let j = 0; j < n; j += 1) {
        if (j === i) continue;
        row += Math.abs((a[i * n + j]! * scale[j]!) / scale[i]!);
        column += Math.abs((a[j * n + i]! * scale[i]!) / scale[j]!);
      }
      if (row > 0 && column > 0) scale[i]! *= powerOfTwo(Math.round(Math.log2(row / column) / 2));
    }
  }
  return scale;
}

function balancedNorm(a: Float64Array, n: number): number {
  const scale = balance(a, n);
  let norm = 0;
  for (let i = 0; i < n; i += 1) {
    let sum = 0;
    for (let j = 0; j < n; j += 1) sum += Math.abs((a[i * n + j]! * scale[j]!) / scale[i]!);
    norm = Math.max(norm, sum);
  }
  return norm;
}

/** The chain down to where its series converges, but no higher than `level`. */
export function startChain(a: Float64Array, n: number, level: number): IncrementChain {
  const norm = balancedNorm(a, n);
  const lowest = Math.min(level, norm > 0 ? Math.floor(Math.log2(SMALL / norm)) : level);
  const h = powerOfTwo(lowest);
  const x = a.map((value) => value * h);
  // F = X (I + X/2 (I + X/3 (...)))
  let sum = new Float64Array(n * n);
  let next = new Float64Array(n * n);
  for (let term = TERMS; term >= 1; term -= 1) {
    for (let i = 0; i < n; i += 1) sum[i * n + i]! += 1;
    multiply(x, sum, n, next);
    for (let i = 0; i < next.length; i += 1) next[i]! /= term;
    [sum, next] = [next, sum];
  }
  return { n, lowest, matrices: [sum], a };
}

/** F for h = 2^level, doubled up from what is there. */
export function incrementAt(chain: IncrementChain, level: number): Float64Array {
  const { matrices, n, lowest } = chain;
  const at = level - lowest;
  while (matrices.length <= at) {
    const last = matrices[matrices.length - 1]!;
    const doubled = new Float64Array(n * n);
    multiply(last, last, n, doubled);
    for (let i = 0; i < doubled.length; i += 1) doubled[i]! += 2 * last[i]!;
    matrices.push(doubled);
  }
  return matrices[at]!;
}
