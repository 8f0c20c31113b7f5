import type { Doubts } from './doubts.ts';
import type { Filled } from './fill-columns.ts';
import type { Table } from './find-table.ts';
import { askAboutWords, toColumn } from './finish-columns.ts';
import type { Column } from './instrument-file.ts';
import { findUnit, UNIT_SYMBOLS, type Unit } from './parse-unit.ts';
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
  let unit = stated;
  if (unit === null) {
    const answer = doubts.ask(
      {
        code: 'unit',
        question: 'The file is a field of numbers and states no unit: which one is it?',
        answers: [...UNIT_SYMBOLS],
        columns: all,
      },
      (given) => findUnit(given) !== null,
    );
    unit = answer === null ? null : findUnit(answer);
  }
  if ((filled.skipped['blank-line'] ?? 0) > 0) {
    doubts.ask({
      code: 'pictures',
      question: 'Blank lines break the field of numbers: is it one picture all the same?',
      answers: ['one'],
      columns: all,
    });
  }
  const drop = settleLabels(filled, doubts);
  const kept = raw.slice(drop.column ? 1 : 0);
  if (drop.row) {
    rows--;
    for (const column of kept) column.values = column.values.slice(1);
  }
  const columns = kept.map((column, i) => {
    const name = `column ${i + 1}`;
    askAboutWords(column, i, name, doubts);
    markSensorCodes(column, rows, unit, i, name, doubts);
    return toColumn(column, rows, name, unit?.symbol ?? null, 'number');
  });
  return { rows, columns };
}

/** A first row or column that counts 0, 1, 2 ... numbers the places rather than being measured: asked, not assumed. */
function settleLabels(filled: Filled, doubts: Doubts): { row: boolean; column: boolean } {
  const { columns: raw, rows } = filled;
  const firstRow = raw.map((column) => column.values[0]!);
  const row = rows > 1 && counts(firstRow.slice(1));
  const column = rows > 2 && counts([...raw[0]!.values.subarray(1, rows)]);
  if (!row && !column) return { row, column };
  const answer = doubts.ask({
    code: 'labels',
    question: `The first ${row && column ? 'row and column count' : row ? 'row counts' : 'column counts'} on by one: do they number the places, or are they readings?`,
    answers: ['numbers', 'readings'],
    columns: raw.map((_, i) => i),
  });
  return answer === 'numbers' ? { row, column } : { row: false, column: false };
}

function counts(values: readonly number[]): boolean {
  return values.length > 1 && values.every((value, i) => Number.isInteger(value) && (i === 0 || value === values[i - 1]! + 1));
}
