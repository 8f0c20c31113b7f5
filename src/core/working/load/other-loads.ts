import type { Exhibit } from '../../evidence/case.ts';
import type { Conditions } from '../../evidence/conditions.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Bench } from '../bench/bench.ts';
import { conditionsOf } from '../bench/conditions-of.ts';

type Load = NonNullable<Conditions['loads']>[number];

/** What the other ports gave while something was read at one port. An open port gave nothing; one whose load is not known counts as loaded. */
export function otherLoads(bench: Bench, exhibit: Exhibit, port: string): Load[] {
  return (conditionsOf(bench, exhibit).loads ?? []).filter((load) => load.port !== port && isDrawing(load));
}

/** Ports loaded beside the one in question, as one word: readings compare only where it is the same. */
export function companyOf(bench: Bench, exhibit: Exhibit, port: string): string {
  return [...new Set(otherLoads(bench, exhibit, port).map((load) => load.port))].sort().join('+');
}

/** True when a load takes current, or may: what is not known counts as loaded. */
export function isDrawing({ draws: what }: Load): boolean {
  if (typeof what !== 'string') return what.state !== 'open';
  const current = parseQuantity(what, 'current');
  return isRefusal(current) || current.value > 0;
}
