import {
  add,
  addPairs,
  type Code,
  call,
  constant,
  get,
  grow,
  lessThan,
  loadPair,
  loadTwice,
  moduleOf,
  multiply,
  type Procedure,
  repeatWhile,
  set,
  storePair,
  timesPairs,
  when,
} from './wasm-bytes.ts';

/**
 * The arithmetic of the hot loop, in instructions that take two numbers at once: compiled JavaScript takes one at a time and checks each
 * index, and is three to four times slower on matrices of this size. Matrices stand column by column, columns padded to `LANES` rows, so
 * that sixteen sums stay in registers while a column passes. Every product is rounded, then every sum, in a fixed order: the same bytes
 * on every machine.
 */
export const LANES = 4;
const BYTES = 8;
const PAIR = 2 * BYTES;
/** 64 KiB each; the most is 2 GiB. */
export const PAGES = { least: 16, most: 32768 } as const;

/** Rows that one block takes, by descending size; each halves what is left. */
const BLOCKS = [16, 8, LANES] as const;

/** out = init + M x. Arguments: M, bytes of a column, rows, columns, x, init, out. */
function times(): Procedure {
  const [m, stride, rows, columns, x, init, out] = [0, 1, 2, 3, 4, 5, 6];
  const [from, at, end] = [7, 8, 9];
  const pair = 10;
  const factor = pair + BLOCKS[0] / 2;
  const block = (size: number): Code => {
    const pairs = Array.from({ length: size / 2 }, (_, index) => index);
    return [
      ...pairs.flatMap((index) => [...get(init!), ...loadPair(index * PAIR), ...set(pair + index)]),
      ...get(m!),
      ...set(from!),
      ...get(x!),
      ...set(at!),
      ...repeatWhile([
        ...get(at!),
        ...loadTwice(0),
        ...set(factor),
        ...pairs.flatMap((index) => [
          ...get(pair + index),
          ...get(from!),
          ...loadPair(index * PAIR),
          ...get(factor),
          ...timesPairs,
          ...addPairs,
          ...set(pair + index),
        ]),
        ...grow(from!, get(stride!)),
        ...grow(at!, constant(BYTES)),
        ...get(at!),
        ...get(end!),
        ...lessThan,
      ]),
      ...pairs.flatMap((index) => [...get(out!), ...get(pair + index), ...storePair(index * PAIR)]),
      ...[m!, init!, out!].flatMap((pointer) => grow(pointer, constant(size * BYTES))),
      ...grow(rows!, constant(-size)),
    ];
  };
  const enough = (size: number): Code => [...constant(size - 1), ...get(rows!), ...lessThan];
  const [most, ...smaller] = BLOCKS;
  return {
    name: 'times',
    arguments: 7,
    integers: 3,
    pairs: factor - pair + 1,
    body: [
      ...get(x!),
      ...get(columns!),
      ...constant(BYTES),
      ...multiply,
      ...add,
      ...set(end!),
      ...enough(most),
      ...when(repeatWhile([...block(most), ...enough(most)])),
      ...smaller.flatMap((size) => [...enough(size), ...when(block(size))]),
    ],
  };
}

/** out = init + A B, column by column. Arguments: A, bytes of a column, rows, columns, B, init, out. */
function product(): Procedure {
  const [a, stride, rows, columns, b, init, out, left] = [0, 1, 2, 3, 4, 5, 6, 7];
  return {
    name: 'product',
    arguments: 7,
    integers: 1,
    pairs: 0,
    body: [
      ...get(columns!),
      ...set(left!),
      ...repeatWhile([
        ...[a, stride, rows, columns, b, init, out].flatMap((one) => get(one!)),
        ...call(0),
        ...[b, init, out].flatMap((pointer) => grow(pointer!, get(stride!))),
        ...grow(left!, constant(-1)),
        ...constant(0),
        ...get(left!),
        ...lessThan,
      ]),
    ],
  };
}

/** S += x xᵀ, from the diagonal down (in whole groups of `LANES` rows). Arguments: S, bytes of a column, columns, x. */
function outer(): Procedure {
  const [s, stride, columns, x] = [0, 1, 2, 3];
  const [column, at, row, end, lastRow] = [4, 5, 6, 7, 8];
  const factor = 9;
  const pairs = Array.from({ length: LANES / 2 }, (_, index) => index);
  return {
    name: 'outer',
    arguments: 4,
    integers: 5,
    pairs: 1,
    body: [
      ...get(x!),
      ...set(column!),
      ...get(x!),
      ...get(columns!),
      ...constant(BYTES),
      ...multiply,
      ...add,
      ...set(end!),
      ...get(x!),
      ...get(stride!),
      ...add,
      ...set(lastRow!),
      ...repeatWhile([
        ...get(column!),
        ...loadTwice(0),
        ...set(factor),
        // from the group of rows in which the diagonal stands
        ...get(column!),
        ...get(x!),
        ...[0x6b], // minus
        ...constant(-LANES * BYTES),
        ...[0x71], // and
        ...set(at!),
        ...get(x!),
        ...get(at!),
        ...add,
        ...set(row!),
        ...grow(at!, get(s!)),
        ...repeatWhile([
          ...pairs.flatMap((index) => [
            ...get(at!),
            ...get(at!),
            ...loadPair(index * PAIR),
            ...get(row!),
            ...loadPair(index * PAIR),
            ...get(factor),
            ...timesPairs,
            ...addPairs,
            ...storePair(index * PAIR),
          ]),
          ...grow(at!, constant(LANES * BYTES)),
          ...grow(row!, constant(LANES * BYTES)),
          ...get(row!),
          ...get(lastRow!),
          ...lessThan,
        ]),
        ...grow(s!, get(stride!)),
        ...grow(column!, constant(BYTES)),
        ...get(column!),
        ...get(end!),
        ...lessThan,
      ]),
    ],
  };
}

export const kernelModule = (): Uint8Array => moduleOf([times(), product(), outer()], PAGES);
