import { findQuantity, isNumberLike, toCellKind } from './cell-kind.ts';
import { STANDARD_MARK } from './decimal-evidence.ts';
import type { Table } from './find-table.ts';
import { findUnit } from './parse-unit.ts';
import { joinPairs, type RowReader } from './row-reader.ts';
import { isStepHeading } from './stated-steps.ts';

/**
 * Whether the comma that separates the cells may be the decimal mark as well: not one number shows a mark of its own, and the rows
 * have more cells than there are names, or there are no names and the whole numbers come in pairs.
 */
export function isCommaInConflict(rows: RowReader, table: Table): boolean {
  if (table.width < 2) return false;
  const cells: string[] = [];
  const header = table.headerLines.at(-1);
  const headerCells = header === undefined ? 0 : rows.read(header, cells);
  const names = countNames(cells.slice(0, headerCells));
  const longest = cells.slice(1, headerCells).some(isStepHeading) ? names : headerCells;
  let isPaired = true;
  let isWider = false;
  let isLonger = false;
  let data = 0;
  for (let line = table.firstData; line < rows.count; line++) {
    let count = rows.read(line, cells);
    if (toCellKind(cells.find((cell, i) => i < count && cell !== '') ?? '') === 'text') continue;
    if (count > longest) isLonger = true;
    while (count > 0 && cells[count - 1] === '') count--;
    if (count === 0) continue;
    for (let i = 0; i < count; i++) {
      const cell = cells[i]!;
      if ((cell.includes('.') || cell.includes(',')) && !STANDARD_MARK.test(cell) && (isNumberLike(cell) || findQuantity(cell) !== null))
        return false;
    }
    data++;
    if (count > names) isWider = true;
    if (isPaired && joinPairs(cells, count) === null) isPaired = false;
  }
  if (data === 0) return false;
  return names === 0 ? isPaired : isWider || isLonger;
}

/** Names of columns: not the start and increment beside them, nor a unit cut off its name ("Voltage, V"). */
function countNames(header: readonly string[]): number {
  let names = 0;
  for (const [i, cell] of header.entries()) {
    if (i > 0 && isStepHeading(cell)) break;
    if (cell !== '' && (i === 0 || findUnit(cell) === null)) names = i + 1;
  }
  return header.some((cell, i) => i > 0 && cell !== '' && findUnit(cell) !== null)
    ? header.filter((cell) => cell !== '' && findUnit(cell) === null).length
    : names;
}

/** Rows whose cells were cut at decimal commas, joined again. Rows that are no pairs stay as they are. */
export function joinDecimalCommas(rows: RowReader): RowReader {
  return {
    count: rows.count,
    read(line, out) {
      const count = rows.read(line, out);
      let filled = count;
      while (filled > 0 && out[filled - 1] === '') filled--;
      const joined = joinPairs(out, filled);
      if (joined === null) return count;
      for (const [i, cell] of joined.entries()) out[i] = cell;
      for (let i = filled; i < count; i++) out[joined.length + i - filled] = '';
      return joined.length + count - filled;
    },
  };
}

/** The first line whose cells cannot be joined into as many numbers as the others have; null when all can. */
export function findUnjoinable(rows: RowReader, firstData: number, widths: readonly number[]): number | null {
  const cells: string[] = [];
  for (let line = firstData; line < rows.count; line++) {
    let count = rows.read(line, cells);
    while (count > 0 && cells[count - 1] === '') count--;
    if (count === 0 || !isNumberLike(cells[0]!)) continue;
    const joined = joinPairs(cells, count);
    if (joined === null || !widths.includes(joined.length)) return line;
  }
  return null;
}
