import type { Column, InstrumentFile } from './instrument-file.ts';

/** What `read --json` prints: the reading without its rows. Numbers are in the file's own units; null where a column has none. */
export interface ColumnDescription {
  name: string;
  unit: string | null;
  kind: Column['kind'];
  /** Cells with a value (for text: cells that are not blank). */
  count: number;
  missing: Column['missing'];
  first: number | string | null;
  last: number | string | null;
  min: number | null;
  max: number | null;
  mean: number | null;
  usable: boolean;
  doubts: string[];
}

export interface Description {
  encoding: string;
  separator: string;
  decimalMark: InstrumentFile['decimalMark'];
  lineEnd: string;
  headerRows: number[];
  unitRow: number | null;
  firstDataRow: number;
  preamble: Record<string, string>;
  shape: InstrumentFile['shape'];
  rows: number;
  timeBase: InstrumentFile['timeBase'];
  timeStepS?: number;
  skippedRows: Record<string, number>;
  columns: ColumnDescription[];
  doubts: { code: string; question: string; answers: string[]; columns: number[] }[];
}

export function describe(file: InstrumentFile): Description {
  const { encoding, separator, decimalMark, lineEnd, headerRows, unitRow, firstDataRow, preamble, shape, rows, timeBase, skippedRows } =
    file;
  return {
    ...{ encoding, separator, decimalMark, lineEnd, headerRows, unitRow, firstDataRow, preamble, shape, rows, timeBase },
    ...(file.timeStepS === null ? {} : { timeStepS: file.timeStepS }),
    skippedRows,
    columns: file.columns.map(describeColumn),
    doubts: file.doubts.map(({ code, question, answers, columns }) => ({ code, question, answers, columns })),
  };
}

function describeColumn(column: Column): ColumnDescription {
  const { name, unit, kind, missing, usable, doubts } = column;
  const shared = { name, unit, kind, missing, usable, doubts };
  if (column.texts !== undefined) {
    const filled = column.texts.filter((text) => text !== '');
    return { ...shared, count: filled.length, first: filled[0] ?? null, last: filled.at(-1) ?? null, min: null, max: null, mean: null };
  }
  let count = 0;
  let first: number | null = null;
  let last: number | null = null;
  let min = Number.POSITIVE_INFINITY;
  let max = Number.NEGATIVE_INFINITY;
  let sum = 0;
  let lost = 0; // what adding a small number to a large sum loses, carried along
  for (const value of column.values) {
    if (Number.isNaN(value)) continue;
    count++;
    first ??= value;
    last = value;
    if (value < min) min = value;
    if (value > max) max = value;
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  if (count === 0) return { ...shared, count, first, last, min: null, max: null, mean: null };
  return { ...shared, count, first, last, min, max, mean: (sum + lost) / count };
}
