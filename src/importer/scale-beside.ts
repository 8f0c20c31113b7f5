import type { Doubts } from './doubts.ts';

/** Rows and columns at the edges of a field of numbers that are the scale drawn beside a picture, and no part of it. */
export interface ScaleBeside {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const NOTHING_BESIDE: ScaleBeside = { left: 0, right: 0, top: 0, bottom: 0 };

const SPANS = 0.9; // share of the range of the rest that a scale covers at least; house choice
const EVEN = 0.001; // share of its range by which a number may stand off an even run, beside the rounding of its last digit; house choice
const MOST = 64; // rows or columns of a scale; house choice
const FEWEST = 8; // numbers of an even run; fewer happen by chance

/**
 * Some exports write the scale beside the picture into the same field: at one edge numbers run evenly from the least to the greatest of all.
 * No surface heats so evenly from end to end; asked, not assumed.
 */
export function settleScale(columns: readonly ArrayLike<number>[], rows: number, doubts: Doubts): ScaleBeside {
  const width = columns.length;
  const columnAt = (x: number) => (i: number) => columns[x]![i]!;
  const rowAt = (y: number) => (i: number) => columns[i]![y]!;
  const range = rangeOf(columns, rows);
  const count = (line: (k: number) => (i: number) => number, lines: number, length: number, fromEnd: boolean): number => {
    let k = 0;
    while (k < Math.min(MOST, lines - 1) && runsEvenly(line(fromEnd ? lines - 1 - k : k), length, range)) k += 1;
    return k;
  };
  const found: ScaleBeside = {
    left: count(columnAt, width, rows, false),
    right: count(columnAt, width, rows, true),
    top: count(rowAt, rows, width, false),
    bottom: count(rowAt, rows, width, true),
  };
  const [edge, lines] = Object.entries(found).find(([, lines]) => lines > 0) ?? [null, 0];
  if (edge === null) return NOTHING_BESIDE;
  const answer = doubts.ask({
    code: 'scale-beside',
    question: `At the edge (${edge}) ${lines === 1 ? 'a line of numbers runs' : `${lines} lines of numbers run`} evenly from the least to the greatest: the scale beside the picture, or readings?`,
    answers: ['scale', 'readings'],
    columns: columns.map((_, i) => i),
  });
  return answer === 'scale' ? { ...NOTHING_BESIDE, [edge]: lines } : NOTHING_BESIDE;
}

/** Least and greatest of the inner part, so that the scale itself does not tell what it spans. */
function rangeOf(columns: readonly ArrayLike<number>[], rows: number): number {
  let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const column of columns.slice(1, -1))
    for (let y = 1; y < rows - 1; y += 1) {
      const value = column[y]!;
      if (value < least) least = value;
      if (value > greatest) greatest = value;
    }
  return greatest - least;
}

function runsEvenly(at: (i: number) => number, length: number, range: number): boolean {
  if (length < FEWEST || !(range > 0)) return false;
  const [first, last] = [at(0), at(length - 1)];
  const span = last - first;
  if (!(Math.abs(span) >= SPANS * range)) return false;
  let decimals = 0;
  for (let i = 0; i < length; i += 1) decimals = Math.max(decimals, String(at(i)).split('.')[1]?.length ?? 0);
  const off = EVEN * Math.abs(span) + Number(`1e-${decimals}`);
  for (let i = 0; i < length; i += 1) if (!(Math.abs(at(i) - (first + (span * i) / (length - 1))) <= off)) return false;
  return true;
}
