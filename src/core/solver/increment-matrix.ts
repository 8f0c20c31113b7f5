import { type Arena, type Block, padded } from './kernel/arena.ts';
import { powerOfTwo } from './power-of-two.ts';

/**
 * Exact steps of x' = A x: x(t + h) = x(t) + F x(t), F = exp(A h) - I, for h = 2^level seconds. Doubling the step is
 * F(2h) = 2 F(h) + F(h)²; keeping F rather than exp(A h) keeps the slow motions exact beside picosecond ones.
 * Source: scaling and squaring, any text on the matrix exponential.
 */
export interface IncrementChain {
  readonly n: number;
  /** Level of the series; there the norm of the balanced A h is at most `SMALL`. */
  readonly lowest: number;
  /** Level of the first matrix that is kept; the ones below are made again where they are needed. */
  readonly first: number;
  readonly matrices: Block[];
  /** n by n, row by row. */
  readonly a: Float64Array;
}

/** Norm below which the series is summed: with eight terms it is exact to the last bit, (1/16)^8 / 9! = 6e-16. */
const SMALL = 1 / 16;
const TERMS = 8;
/** Sweeps of balancing; three settle what matters. */
const SWEEPS = 4;

/** Powers of two that bring rows and columns of A to like size; rounding-free (Osborne's method). */
export function balance(a: Float64Array, n: number): Float64Array {
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

/** Blocks for work in passing, n columns each; never all zero again but the first. */
export class Bench {
  readonly arena: Arena;
  readonly n: number;
  readonly rows: number;
  readonly zero: Block;
  readonly #blocks: Block[] = [];

  constructor(arena: Arena, n: number) {
    this.arena = arena;
    this.n = n;
    this.rows = padded(n);
    this.zero = arena.block(this.rows * n);
  }
  at(index: number): Block {
    while (this.#blocks.length <= index) this.#blocks.push(this.arena.block(this.rows * this.n));
    return this.#blocks[index]!;
  }
}

/** Places on the bench: three for the series and the doubling; from `LADDER` on what stands below the first kept level. */
const PLACE = { x: 0, sum: 1, next: 2 } as const;
export const LADDER = 6;

/** out = column by column, a row by row times a factor. */
export function put(a: Float64Array, n: number, factor: number, { data }: Block): void {
  const rows = padded(n);
  for (let i = 0; i < n; i += 1) for (let j = 0; j < n; j += 1) data[j * rows + i] = a[i * n + j]! * factor;
}

function series(bench: Bench, a: Float64Array, level: number, out: Block): void {
  const { arena, n, rows } = bench;
  const x = bench.at(PLACE.x);
  put(a, n, powerOfTwo(level), x);
  // F = X (I + X/2 (I + X/3 (...)))
  let sum = bench.at(PLACE.sum);
  let next = bench.at(PLACE.next);
  sum.data.fill(0);
  for (let term = TERMS; term >= 1; term -= 1) {
    for (let i = 0; i < n; i += 1) sum.data[i * rows + i]! += 1;
    arena.product(x, rows, n, sum, bench.zero, next);
    if (term > 1) for (let i = 0; i < next.data.length; i += 1) next.data[i]! /= term;
    [sum, next] = [next, sum];
  }
  out.data.set(sum.data);
}

function double(bench: Bench, from: Block, out: Block): void {
  const twice = bench.at(PLACE.x);
  for (let i = 0; i < twice.data.length; i += 1) twice.data[i] = 2 * from.data[i]!;
  bench.arena.product(from, bench.rows, bench.n, from, twice, out);
}

/** The matrices from the series up to the level below `first`, on the bench: index 0 is the lowest. */
export function ladderBelow(bench: Bench, { a, lowest, first }: IncrementChain): (level: number) => Block {
  series(bench, a, lowest, bench.at(LADDER));
  for (let level = lowest + 1; level < first; level += 1)
    double(bench, bench.at(LADDER + level - lowest - 1), bench.at(LADDER + level - lowest));
  return (level) => bench.at(LADDER + level - lowest);
}

/** The chain from `first` upward; made from where its series converges. */
export function startChain(bench: Bench, a: Float64Array, first: number): IncrementChain {
  const { n, rows, arena } = bench;
  const norm = balancedNorm(a, n);
  const lowest = Math.min(first, norm > 0 ? Math.floor(Math.log2(SMALL / norm)) : first);
  const chain: IncrementChain = { n, lowest, first, matrices: [arena.block(rows * n)], a };
  const kept = chain.matrices[0]!;
  if (lowest === first) series(bench, a, lowest, kept);
  else double(bench, ladderBelow(bench, chain)(first - 1), kept);
  return chain;
}

/** F for h = 2^level, doubled up from what is there. */
export function incrementAt(bench: Bench, chain: IncrementChain, level: number): Block {
  const { matrices, first } = chain;
  const at = level - first;
  while (matrices.length <= at) {
    const doubled = bench.arena.block(bench.rows * bench.n);
    double(bench, matrices[matrices.length - 1]!, doubled);
    matrices.push(doubled);
  }
  return matrices[at]!;
}
