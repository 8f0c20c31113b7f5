import type { Winding } from '../../circuit/graph/links.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { openValue } from '../bench/open-value.ts';
import type { MissingValue } from './divider-resistance.ts';

/** Turns of a winding as traced or counted. */
export function turnsOf(bench: Bench, { part, name }: Winding, symbol: string): Derived | MissingValue {
  const windings = bench.parts.get(part)?.windings ?? [];
  const index = windings.findIndex((one) => one.name === name);
  const field = `/parts/${part}/windings/${Math.max(index, 0)}/turns`;
  const opened = openValue<string>(windings[index]?.turns);
  const read = opened.state === 'read' ? parseQuantity(opened.v, 'ratio') : null;
  if (read === null || isRefusal(read) || read.side !== undefined || read.value <= 0) return { opened, field };
  return given(
    'typed',
    read.value,
    '1',
    { id: field, name: 'turns', field, symbol },
    read.u === null ? {} : { form: doubtOf({ id: `stated/${field}`, u: read.u, means: 'stated' }) },
  );
}
