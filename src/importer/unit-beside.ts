import { findUnit, type Unit } from './parse-unit.ts';
import type { RawColumn } from './raw-column.ts';

const UNIT_NAME = /^(units?|uom|einheit(en)?|unit[ée]s?|column \d+)( ?\d+)?$/i; // "column 3" is a column without a name

/**
 * The unit that stands in a column of its own, right of the numbers: in every row one unit of the same kind, under a heading that says so or
 * none. Numbers with another prefix than the first are brought to the first. Null when it is not as plain as that: then the unit is asked for.
 */
export function takeUnitBeside(numbers: RawColumn, beside: RawColumn | undefined, name: string, rows: number): Unit | null {
  if (beside === undefined || (beside.kind !== 'text' && beside.kind !== 'half-day') || !UNIT_NAME.test(name)) return null;
  if (numbers.withUnit > 0) return null;
  const known = new Map<string, Unit | null>();
  const units: (Unit | null)[] = [];
  let first: Unit | null = null;
  for (let row = 0; row < rows; row++) {
    const text = beside.texts[row] ?? '';
    if (!known.has(text)) known.set(text, findUnit(text));
    const unit = known.get(text) ?? null;
    const isMissing = Number.isNaN(numbers.values[row]!);
    if (unit === null && !(text === '' && isMissing)) return null;
    if (unit !== null && first !== null && (unit.base !== first.base || unit.said !== first.said)) return null;
    first ??= unit;
    units.push(unit);
  }
  if (first === null) return null;
  for (const [row, unit] of units.entries()) {
    const power = unit === null ? 0 : unit.power - first.power;
    if (power !== 0) numbers.values[row] = scaleByTen(numbers.values[row]!, power);
  }
  return first;
}

/** Rounded once: an inexact negative power of ten would round a second time. */
export function scaleByTen(value: number, power: number): number {
  return power < 0 ? value / Number(`1e${-power}`) : value * Number(`1e${power}`);
}
