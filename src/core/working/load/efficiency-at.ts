import { derive } from '../../formula/derive.ts';
import { averageOfFour } from '../../formula/load/average-of-four.ts';
import { efficiency } from '../../formula/load/efficiency.ts';
import { power } from '../../formula/load/power.ts';
import { valueAtCurrent } from '../../formula/load/value-at-current.ts';
import { combine } from '../../trace/combine.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Sweep, SweepRow } from './read-sweep.ts';

export const POINTS = { quarter: 0.25, half: 0.5, threeQuarters: 0.75, full: 1 } as const; // shares of the nameplate current, EU 2019/1782 annex I
export type Point = keyof typeof POINTS;
export const LOAD_POINTS = Object.keys(POINTS) as Point[];
/** A row this near to a load point stands for it, as a share of the claim; between rows the values are interpolated. */
const ON_THE_POINT = 0.001;

/**
 * Average active efficiency of a sweep with input power. A load point that lies beyond the last row is not extrapolated: the answer is then
 * the name of the first point that is missing.
 */
export function averageEfficiencyOf(sweep: Sweep, claim: Derived): Derived | { missing: Point } {
  const found = {} as Record<Point, Derived>;
  for (const point of LOAD_POINTS) {
    const one = efficiencyAtPoint(sweep, claim, point, `load/${sweep.exhibit.id}/efficiency-${point}`);
    if (one === null) return { missing: point };
    found[point] = one;
  }
  return derive(averageOfFour, found, `load/${sweep.exhibit.id}/average-efficiency`);
}

/** Efficiency at one load point; null where the sweep has no rows around it. */
export function efficiencyAtPoint(sweep: Sweep, claim: Derived, point: Point, at: string): Derived | null {
  const rows = sweep.rows.filter((row) => row.inputPower !== null && row.inputPower.value > 0);
  const current = combine(
    {
      kind: 'reduce',
      unit: 'A',
      formula: null,
      symbols: { claim: 'I_c' },
      moves: { claim: 'up' },
      compute: ({ claim: whole }) => whole * POINTS[point],
    },
    { claim },
    { id: `${at}/current`, name: 'loadPoint', symbol: 'I' },
  );
  return efficiencyAt(rows, current, claim.value, at);
}

const TENTH = 0.1; // EU 2019/1782 annex II 2(c): declared above 10 W of nameplate, without a least

/** Efficiency at a tenth of the claimed current, which a maker has to declare; null where the sweep has no rows around it. */
export function efficiencyAtTenth(sweep: Sweep, claim: Derived): number | null {
  const rows = sweep.rows.filter((row) => row.inputPower !== null && row.inputPower.value > 0);
  const current = { ...claim, value: claim.value * TENTH };
  return efficiencyAt(rows, current, claim.value, `load/${sweep.exhibit.id}/efficiency-tenth`)?.value ?? null;
}

function efficiencyAt(rows: readonly SweepRow[], current: Derived, claim: number, at: string): Derived | null {
  const near = rows.find((row) => Math.abs(row.current.value - current.value) <= ON_THE_POINT * claim);
  if (near !== undefined) {
    const output = derive(power, { voltage: near.voltage, current: near.current }, `${at}/output`);
    return derive(efficiency, { output, input: near.inputPower! }, at);
  }
  const after = rows.findIndex((row) => row.current.value > current.value);
  const b = rows[after];
  const a = rows[after - 1];
  if (a === undefined || b === undefined) return null;
  const outputOf = (row: SweepRow, which: string): Derived =>
    derive(power, { voltage: row.voltage, current: row.current }, `${at}/output-${which}`);
  const between = (before: Derived, behind: Derived, what: string): Derived =>
    derive(valueAtCurrent, { current, currentBefore: a.current, currentAfter: b.current, before, after: behind }, `${at}/${what}`);
  const output = between(outputOf(a, 'before'), outputOf(b, 'after'), 'output');
  const input = between(a.inputPower!, b.inputPower!, 'input');
  return derive(efficiency, { output, input }, at);
}
