import type { Doubts } from './doubts.ts';
import type { Filled } from './fill-columns.ts';
import type { Table } from './find-table.ts';
import { askAboutWords, toColumn } from './finish-columns.ts';
import type { Column } from './instrument-file.ts';
import { findUnit, UNIT_SYMBOLS, type Unit } from './parse-unit.ts';
import { NOTHING_BESIDE, settleScale } from './scale-beside.ts';
import { markSensorCodes } from './sensor-codes.ts';

/** A picture of numbers, as thermal cameras export it: many columns of one quantity, without names. */

const FEWEST_COLUMNS = 16; // fewer may be a log without names, which is read as columns and asked about; house choice

export function isMatrix(table: Table, filled: Filled): boolean {
  return (
    table.headerLines.length === 0 &&
    table.unitLine === null &&
    table.width >= FEWEST_COLUMNS &&
    filled.columns.every((column) => column.kind === 'number')
  );
}

export function finishMatrix(filled: Filled, stated: Unit | null, doubts: Doubts): { rows: number; columns: Column[] } {
  const { columns: raw } = filled;
  let { rows } = filled;
  const all = raw.map((_, i) => i);
  const unit = stated ?? askUnit(all, doubts);
  if ((filled.skipped['blank-line'] ?? 0) > 0) {
    doubts.ask({
      code: 'pictures',
      question: 'Blank lines break the field of numbers: is it one picture all the same?',
      answers: ['one'],
      columns: all,
    });
  }
  const labels = settleLabels(filled, doubts);
  const unlabelled = raw.slice(labels.column ? 1 : 0);
  if (labels.row) {
    rows--;
    for (const column of unlabelled) column.values = column.values.slice(1);
  }
  // while it is open whether an edge numbers the places, nothing else is asked about it
  const drop = labels.open
    ? NOTHING_BESIDE
    : settleScale(
        unlabelled.map(({ values }) => values),
        rows,
        doubts,
      );
  const kept = unlabelled.slice(drop.left, unlabelled.length - drop.right);
  if (drop.top + drop.bottom > 0) for (const column of kept) column.values = column.values.slice(drop.top, rows - drop.bottom);
  rows -= drop.top + drop.bottom;
  const columns = kept.map((column, i) => {
    const name = `column ${i + 1}`;
    askAboutWords(column, i, name, doubts);
    markSensorCodes(column, rows, unit, i, name, doubts);
    return toColumn(column, rows, name, unit?.symbol ?? null, 'number');
  });
  return { rows, columns };
}

/** Every number of the field is in one unit: asked where the file states none. */
export function askUnit(columns: readonly number[], doubts: Doubts): Unit | null {
  const answer = doubts.ask(
    {
      code: 'unit',
      question: 'The file is a field of numbers and states no unit: which one is it?',
      answers: [...UNIT_SYMBOLS],
      columns: [...columns],
    },
    (given) => findUnit(given) !== null,
  );
  return answer === null ? null : findUnit(answer);
}

/** A first row or column that counts 0, 1, 2 ... numbers the places rather than being measured: asked, not assumed. */
function settleLabels(filled: Filled, doubts: Doubts): { row: boolean; column: boolean; open: boolean } {
  const { columns: raw, rows } = filled;
  const firstRow = raw.map((column) => column.values[0]!);
  const row = rows > 1 && counts(firstRow.slice(1));
  const column = rows > 2 && counts([...raw[0]!.values.subarray(1, rows)]);
  if (!row && !column) return { row, column, open: false };
  const answer = doubts.ask({
    code: 'labels',
    question: `The first ${row && column ? 'row and column count' : row ? 'row counts' : 'column counts'} on by one: do they number the places, or are they readings?`,
    answers: ['numbers', 'readings'],
    columns: raw.map((_, i) => i),
  });
  return answer === 'numbers' ? { row, column, open: false } : { row: false, column: false, open: answer === null };
}

function counts(values: readonly number[]): boolean {
  return values.length > 1 && values.every((value, i) => Number.isInteger(value) && (i === 0 || value === values[i - 1]! + 1));
}
