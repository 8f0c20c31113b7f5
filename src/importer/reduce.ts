import type { InstrumentFile } from './instrument-file.ts';

export const MOST_ROWS = 2000; // rows of a reduced table; more show nothing on a page or screen

/** One column in bins of neighbouring rows. NaN where a bin holds no value. */
export interface ReducedColumn {
  readonly name: string;
  readonly unit: string | null;
  readonly min: Float64Array;
  readonly max: Float64Array;
  readonly mean: Float64Array;
  /** Values (not missing) in each bin. */
  readonly count: Uint32Array;
}

export interface ReducedTable {
  /** False when every row stands for itself: min, max and mean are then the same. */
  readonly reduced: boolean;
  readonly rows: number;
  /** The first row of each bin, counted from 0 in the full table. */
  readonly firstRows: Uint32Array;
  /** Columns of numbers and times, in the order of the file; `columns[i]` came from column `sources[i]`. */
  readonly columns: readonly ReducedColumn[];
  readonly sources: readonly number[];
}

/** The table in at most `most` bins of (nearly) equally many rows; a shorter one row by row. */
export function reduceTable(file: Pick<InstrumentFile, 'columns' | 'rows'>, most: number = MOST_ROWS): ReducedTable {
  const bins = Math.min(file.rows, most);
  const firstRows = new Uint32Array(bins);
  for (let bin = 0; bin < bins; bin++) firstRows[bin] = Math.floor((bin * file.rows) / bins);
  const sources = file.columns.flatMap((column, i) => (column.kind === 'text' ? [] : [i]));
  const columns = sources.map((i) => {
    const { name, unit, values } = file.columns[i]!;
    return { name, unit, ...reduceValues(values, file.rows, firstRows) };
  });
  return { reduced: file.rows > most, rows: bins, firstRows, columns, sources };
}

function reduceValues(values: Float64Array, rows: number, firstRows: Uint32Array): Pick<ReducedColumn, 'min' | 'max' | 'mean' | 'count'> {
  const bins = firstRows.length;
  const min = new Float64Array(bins);
  const max = new Float64Array(bins);
  const mean = new Float64Array(bins);
  const count = new Uint32Array(bins);
  for (let bin = 0; bin < bins; bin++) {
    const end = bin + 1 < bins ? firstRows[bin + 1]! : rows;
    let least = Number.NaN;
    let most = Number.NaN;
    let middle = 0;
    let n = 0;
    for (let row = firstRows[bin]!; row < end; row++) {
      const value = values[row]!;
      if (Number.isNaN(value)) continue;
      n++;
      if (!(value >= least)) least = value;
      if (!(value <= most)) most = value;
      middle += (value - middle) / n; // a running mean cannot overflow as a sum can
    }
    min[bin] = least;
    max[bin] = most;
    mean[bin] = n === 0 ? Number.NaN : n === 1 ? least : middle;
    count[bin] = n;
  }
  return { min, max, mean, count };
}
