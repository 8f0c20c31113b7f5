import type { Doubts } from './doubts.ts';
import type { Unit } from './parse-unit.ts';
import type { RawColumn } from './raw-column.ts';

/** Numbers that loggers write in place of a reading when the probe is open, or the input is beyond its range. */

/** Absolute zero in the file's own unit: nothing measured is colder. */
const COLDEST: Readonly<Record<string, number>> = { '°C': -273.15, '°F': -459.67, K: 0 };
const HOTTEST = 9999; // no probe of a bench reads as high, in any unit of temperature
/** Temperatures that are possible, but far more often a mark: two lowest values of probes, one open input, two full scales. */
const SUSPECT_CELSIUS = new Set([-200, -127, -270, 850, 999, 999.9, 3276.7, 6553.5, -99.9, -99, -100]);
/** Rows of nines and full scales of integers, suspect only where they stand far above every other value. */
const SUSPECT = new Set([999, 999.9, 999.99, 9999, 9999.9, 9999.99, 99999, 99999.9, 999999, 32767, 32768, 65535]);
const FAR_ABOVE = 5; // times the largest other value; house choice

export function markSensorCodes(raw: RawColumn, rows: number, unit: Unit | null, index: number, name: string, doubts: Doubts): void {
  const { values } = raw;
  const coldest = unit === null ? undefined : COLDEST[unit.symbol];
  if (coldest !== undefined) {
    for (let row = 0; row < rows; row++) {
      const value = values[row]!;
      if (value < coldest || value >= HOTTEST) raw.takeMissing(row, 'sensor-code');
    }
  }
  if (unit !== null && (unit.dimension === 'time' || unit.dimension === 'number')) return;
  const isSuspect = coldest !== undefined && unit?.symbol === '°C' ? (v: number) => SUSPECT_CELSIUS.has(v) : findSuspect(values, rows);
  if (isSuspect === null) return;
  let count = 0;
  let example = 0;
  for (let row = 0; row < rows; row++) {
    if (!isSuspect(values[row]!)) continue;
    count++;
    example = values[row]!;
  }
  if (count === 0) return;
  const answer = doubts.ask({
    code: `sensor-code:${index}`,
    question: `Column "${name}" holds ${example} ${count === 1 ? 'once' : `in ${count} rows`}: a reading, or the mark of a missing one?`,
    answers: ['missing', 'reading'],
    columns: [index],
  });
  if (answer !== 'missing') return;
  for (let row = 0; row < rows; row++) if (isSuspect(values[row]!)) raw.takeMissing(row, 'sensor-code');
}

function findSuspect(values: Float64Array, rows: number): ((value: number) => boolean) | null {
  let largest = 0;
  let suspects = 0;
  for (let row = 0; row < rows; row++) {
    const size = Math.abs(values[row]!);
    if (SUSPECT.has(size)) suspects++;
    else if (size > largest) largest = size;
  }
  if (suspects === 0) return null;
  return (value) => SUSPECT.has(Math.abs(value)) && Math.abs(value) > largest * FAR_ABOVE;
}
