import type { InstrumentFile } from './instrument-file.ts';
import { findUnit, toSeconds } from './parse-unit.ts';
import { secondsOfParts } from './time-in-parts.ts';

/** The time of every row in seconds by the file's time base, NaN where it has none; null when the file has no time base. */
export function toTimes(file: Pick<InstrumentFile, 'timeBase' | 'columns' | 'rows'>): Float64Array | null {
  const base = file.timeBase;
  if (base === null) return null;
  const times = new Float64Array(file.rows);
  if (base.kind === 'steps') {
    const sequence = base.sequence === null ? null : file.columns[base.sequence]!.values;
    for (let row = 0; row < file.rows; row++) {
      const nth = sequence === null ? row : sequence[row]! - sequence[0]!;
      times[row] = base.startS + nth * base.stepS;
    }
    return times;
  }
  if (base.kind === 'parts') {
    const [hours, minutes, seconds] = [base.hours, base.minutes, base.seconds].map((index) => file.columns[index]!.values);
    for (let row = 0; row < file.rows; row++) times[row] = secondsOfParts(hours![row]!, minutes![row]!, seconds![row]!);
    return times;
  }
  const column = file.columns[base.column]!;
  const unit = column.unit === null ? null : findUnit(column.unit);
  const dates = base.dateColumn === null ? null : file.columns[base.dateColumn]!.values;
  for (let row = 0; row < file.rows; row++) {
    const value = column.values[row]!;
    times[row] = (unit === null ? Number.NaN : toSeconds(value, unit)) + (dates === null ? 0 : dates[row]!);
  }
  return times;
}
