import { derive } from '../../formula/derive.ts';
import { loss } from '../../formula/load/loss.ts';
import { power } from '../../formula/load/power.ts';
import { valueAtCurrent } from '../../formula/load/value-at-current.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Sweep, SweepRow } from './read-sweep.ts';

const ON_THE_ROW = 0.01; // share of a current within which a row counts as at it

/** What a unit turns into heat at a current, by input less output of a sweep; null where no row is at it and none lie on both sides, or nobody read the input. */
export function lossAt({ rows }: Pick<Sweep, 'rows'>, current: Derived, id: string): Derived | null {
  const told = rows.filter((row) => row.inputPower !== null && row.inputPower.value > 0);
  const lossOf = (row: SweepRow, which: string): Derived =>
    derive(
      loss,
      { input: row.inputPower!, output: derive(power, { voltage: row.voltage, current: row.current }, `${id}/${which}/output`) },
      `${id}/${which}`,
    );
  const near = told.find((row) => Math.abs(row.current.value - current.value) <= ON_THE_ROW * current.value);
  if (near !== undefined) return lossOf(near, 'row');
  const after = told.findIndex((row) => row.current.value > current.value);
  const [a, b] = [told[after - 1], told[after]];
  if (a === undefined || b === undefined) return null;
  const ends = { current, currentBefore: a.current, currentAfter: b.current, before: lossOf(a, 'before'), after: lossOf(b, 'after') };
  return derive(valueAtCurrent, ends, `${id}/between`);
}
