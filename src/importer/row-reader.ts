import { getLine, type Lines } from './index-lines.ts';
import { type SeparatorName, splitCells } from './split-cells.ts';

/** Reads the cells of a line by its index into a buffer, and says how many there are. */
export interface RowReader {
  readonly count: number;
  read(line: number, out: string[]): number;
}

export function readRows(lines: Lines, separator: SeparatorName): RowReader {
  return { count: lines.count, read: (line, out) => splitCells(getLine(lines, line), separator, out) };
}

/** The rows without their first columns: the right half of a file that has its preamble beside the samples. */
export function dropColumns(rows: RowReader, dropped: number): RowReader {
  return {
    count: rows.count,
    read(line, out) {
      const count = rows.read(line, out);
      if (count <= dropped) return 0;
      for (let i = dropped; i < count; i++) out[i - dropped] = out[i]!;
      return count - dropped;
    },
  };
}

const WHOLE = /^[+\-−]?\d+$/;
const FRACTION = /^\d+(?:[eE][+-]?\d+)?(?: ?[^\d\s.,+-][^\d.,]*)?$/; // with its unit, where the cells have one

/**
 * Cells cut in two by a comma that is the decimal mark, put together again: a whole number and the fraction behind it. Null when a
 * row of whole numbers is odd, so that it cannot be told which one had no fraction.
 */
export function joinPairs(cells: readonly string[], count: number): string[] | null {
  const joined: string[] = [];
  for (let i = 0; i < count; i++) {
    const cell = cells[i]!;
    if (!WHOLE.test(cell)) {
      joined.push(cell);
      continue;
    }
    const next = i + 1 < count ? cells[i + 1]! : '';
    if (!FRACTION.test(next)) return null;
    joined.push(`${cell},${next}`);
    i++;
  }
  return joined;
}
