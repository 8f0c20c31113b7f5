import type { Column, TimeBase } from './instrument-file.ts';

const SIXTY = 60; // minutes of an hour, seconds of a minute

type Parts = Extract<TimeBase, { kind: 'parts' }>;

/**
 * One time in three columns side by side: whole hours, whole minutes and seconds below sixty. Columns that each tell the whole time in a unit of
 * their own do not fit, since their minutes or seconds pass sixty, or none of them ever carries over to the next.
 */
export function findTimeInParts(columns: readonly Column[], rows: number): Parts | null {
  for (let first = 0; first + 2 < columns.length; first++) {
    const [hours, minutes, seconds] = [columns[first]!, columns[first + 1]!, columns[first + 2]!];
    if (hours.unit !== 'h' || minutes.unit !== 'min' || seconds.unit !== 's') continue;
    if ([hours, minutes, seconds].some(({ kind, missing }) => kind !== 'number' || missing.count > 0)) continue;
    let carried = false;
    let fits = rows > 1;
    for (let row = 0; fits && row < rows; row++) {
      const [h, min, s] = [hours.values[row]!, minutes.values[row]!, seconds.values[row]!];
      fits = Number.isInteger(h) && h >= 0 && Number.isInteger(min) && min >= 0 && min < SIXTY && s >= 0 && s < SIXTY;
      if (row > 0 && s < seconds.values[row - 1]!) carried = true;
    }
    if (fits && carried) return { kind: 'parts', hours: first, minutes: first + 1, seconds: first + 2 };
  }
  return null;
}

/** Seconds of such a time. */
export function secondsOfParts(hours: number, minutes: number, seconds: number): number {
  return (hours * SIXTY + minutes) * SIXTY + seconds;
}
