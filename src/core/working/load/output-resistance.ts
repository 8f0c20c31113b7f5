import { combine } from '../../trace/combine.ts';
import type { Derived } from '../../trace/derived.ts';
import { lineThrough } from './line-through.ts';
import type { Sweep, SweepRow } from './read-sweep.ts';

const FROM = 0.1; // of the current held: below it idle modes bend the curve
const TO = 0.8; // above it the limit does
const LEAST_ROWS = 3;
const MOST_ROWS = 12; // more make the derivation long and the slope no better

/**
 * Output resistance between a tenth and four fifths of the current held, by least squares; negative where the voltage rises with the load (cable
 * compensation). A meter's fixed offset is one leaf of all rows and falls out of the slope.
 */
export function outputResistance(sweep: Sweep, held: Derived): Derived | null {
  if (held.value <= 0) return null;
  const between = sweep.rising.filter(
    ({ current, voltage }) =>
      current.side === undefined && voltage.side === undefined && current.value >= FROM * held.value && current.value <= TO * held.value,
  );
  const rows = thin(between);
  if (rows.length < LEAST_ROWS || lineThrough(rows.map(({ current, voltage }) => ({ x: current.value, y: voltage.value }))) === null)
    return null;
  const named: Record<string, Derived> = {};
  const symbols: Record<string, string> = {};
  for (const [index, { current, voltage }] of rows.entries()) {
    named[`i${index}`] = current;
    named[`v${index}`] = voltage;
    symbols[`i${index}`] = `I_${index + 1}`;
    symbols[`v${index}`] = `V_${index + 1}`;
  }
  const compute = (plain: Readonly<Record<string, number>>): number => {
    const line = lineThrough(rows.map((_row, index) => ({ x: plain[`i${index}`] ?? 0, y: plain[`v${index}`] ?? 0 })));
    return line === null ? Number.NaN : -line.slope;
  };
  return combine({ kind: 'reduce', unit: 'Ω', formula: null, symbols, compute }, named, {
    id: `load/${sweep.exhibit.id}/output-resistance`,
    name: 'outputResistance',
    symbol: 'R_s',
  });
}

/** Evenly chosen rows, the first and the last among them. */
function thin(rows: readonly SweepRow[]): readonly SweepRow[] {
  if (rows.length <= MOST_ROWS) return rows;
  return Array.from({ length: MOST_ROWS }, (_, index) => rows[Math.round((index * (rows.length - 1)) / (MOST_ROWS - 1))]!);
}
