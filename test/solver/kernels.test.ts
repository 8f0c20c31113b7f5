import fc from 'fast-check';
import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { Arena, type Block, padded } from '../../src/core/solver/kernel/arena.ts';

/** Columns one after the other, each padded to whole groups of rows. */
function fill({ data }: Block, rows: number, from: Matrix): void {
  for (let j = 0; j < from.columns; j += 1) for (let i = 0; i < from.rows; i += 1) data[j * rows + i] = from.get(i, j);
}
const number = fc.double({ min: -1e3, max: 1e3, noNaN: true });
const list = (count: number) => fc.array(number, { minLength: count, maxLength: count });
/** Two square matrices and a column of one size. */
const problem = fc.integer({ min: 1, max: 45 }).chain((n) => fc.tuple(fc.constant(n), list(n * n), list(n * n), list(n)));

const NEAR = 1e-9; // of the largest sum of 45 products of thousands

describe('the kernels', () => {
  it('multiply as a library of matrices does, whatever the size', () => {
    fc.assert(
      fc.property(problem, ([n, first, second, column]) => {
        const arena = Arena.take();
        const rows = padded(n);
        const [a, b, zero, out] = Array.from({ length: 4 }, () => arena.block(rows * n)) as [Block, Block, Block, Block];
        const [x, y] = [arena.block(rows), arena.block(rows)];
        const [ma, mb] = [Matrix.from1DArray(n, n, first), Matrix.from1DArray(n, n, second)];
        fill(a, rows, ma);
        fill(b, rows, mb);
        x.data.set(column);
        arena.times(a, rows, n, x, x, y);
        const expected = Matrix.columnVector(column).add(ma.mmul(Matrix.columnVector(column)));
        for (let i = 0; i < n; i += 1) expect(Math.abs(y.data[i]! - expected.get(i, 0))).toBeLessThan(NEAR * 45e6);
        arena.product(a, rows, n, b, zero, out);
        const both = ma.mmul(mb);
        for (let j = 0; j < n; j += 1)
          for (let i = 0; i < n; i += 1) expect(Math.abs(out.data[j * rows + i]! - both.get(i, j))).toBeLessThan(NEAR * 45e6);
        arena.giveBack();
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  it('add the products of a column with itself from the diagonal down', () => {
    const n = 7;
    const arena = Arena.take();
    const rows = padded(n);
    const [sums, x] = [arena.block(rows * n), arena.block(rows)];
    for (let i = 0; i < n; i += 1) x.data[i] = i + 1;
    arena.outer(sums, rows, n, x);
    arena.outer(sums, rows, n, x);
    for (let j = 0; j < n; j += 1) for (let i = j; i < n; i += 1) expect(sums.data[j * rows + i]).toBe(2 * (i + 1) * (j + 1));
    arena.giveBack();
  });

  it('give zeros again after another run has used the memory, and keep views while it grows', () => {
    const first = Arena.take();
    const early = first.block(4);
    early.data.fill(7);
    first.block(1 << 18).data.fill(7);
    expect([...early.data]).toEqual([7, 7, 7, 7]);
    first.giveBack();
    const second = Arena.take();
    expect([...second.block(1000).data].every((value) => value === 0)).toBe(true);
    second.giveBack();
  });
});
