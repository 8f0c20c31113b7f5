import type { ReadTable } from '../core/working/bench/bench.ts';
import type { InstrumentFile } from '../importer/instrument-file.ts';
import { MOST_ROWS, reduceTable } from '../importer/reduce.ts';

/** What `assess` gets of a file: at most 2,000 rows (means of neighbouring rows beyond that), in the file's own units and column order. */
export function toReadTable(file: InstrumentFile): ReadTable {
  const reduced = file.rows > MOST_ROWS ? reduceTable(file) : null;
  return {
    rows: reduced?.rows ?? file.rows,
    shape: file.shape,
    columns: file.columns.map(({ name, unit, values, usable, doubts }, index) => {
      const at = reduced?.sources.indexOf(index) ?? -1;
      const own = reduced === null ? values : (reduced.columns[at]?.mean ?? new Float64Array(reduced.rows).fill(Number.NaN));
      return { name, unit, values: own, doubts: usable ? [] : [...doubts] };
    }),
  };
}
