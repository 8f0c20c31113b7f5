import { type Arena, type Block, padded } from './kernel/arena.ts';

/**
 * What is looked at in a topology: some of its rows, first values, then rates of change, in one matrix. The first rows are those that are
 * wanted in every topology, always in the same places.
 */
export interface Look {
  /** Place of each row of the layout; -1 for one that nothing wants here. */
  readonly placeOf: Int32Array;
  /** How many values; the rates stand as many places further on. */
  readonly half: number;
  readonly matrix: Block;
}

/** `rows` and `rates` row by row, n columns; `wanted`: their numbers in the order of their places. */
export function lookAt(arena: Arena, rows: Float64Array, rates: Float64Array, n: number, wanted: readonly number[]): Look {
  const placeOf = new Int32Array(rows.length / n).fill(-1);
  wanted.forEach((row, place) => {
    placeOf[row] = place;
  });
  const half = padded(wanted.length);
  const matrix = arena.block(2 * half * n);
  wanted.forEach((row, place) => {
    for (let j = 0; j < n; j += 1) {
      matrix.data[j * 2 * half + place] = rows[row * n + j]!;
      matrix.data[j * 2 * half + half + place] = rates[row * n + j]!;
    }
  });
  return { placeOf, half, matrix };
}
