import type { Part } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { junction } from '../../formula/thermal/junction.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { cite } from '../../source/source.ts';
import { rectifierPackage } from '../../table/diode-makers/2026/rectifier-package.ts';
import { findCell } from '../../table/look-up.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import type { SpotReading } from './spot-facts.ts';

/** 0.3 V of a small Schottky to 1.1 V of a fast silicon part at their rated current; nobody said which it is. */
const FORWARD_V = 0.7;
const FORWARD_HALF_V = 0.4;

/** A diode with every pin on the output side: the rectifier behind the transformer. */
export function isOutputRectifier(bench: Bench, part: Part): boolean {
  const sides = (part.pins ?? []).map(({ net }) => findRead(bench.conductors.get(findRead(net) ?? '')?.side));
  return findRead(part.kind) === 'diode' && sides.length > 0 && sides.every((side) => side === 'output');
}

/** The temperature of a junction with what it was worked out from. */
export interface Junction {
  readonly at: Derived;
  readonly forward: Derived;
  readonly current: Derived;
}

/** Why a junction cannot be worked out, or its temperature where the leads are at `lead`. */
export function junctionOf(
  bench: Bench,
  part: Part,
  reading: SpotReading,
  lead: Derived,
  id: string,
): Junction | 'rectifierPackageNotKnown' | 'rectifierCurrentNotKnown' | 'severalRectifiers' {
  const drawn = (reading.under.loads ?? []).filter(({ draws }) => typeof draws === 'string');
  const [only] = drawn;
  if (only === undefined || drawn.length > 1 || bench.one.ports.length > 1) return 'rectifierCurrentNotKnown';
  if (bench.one.parts.filter((other) => isOutputRectifier(bench, other)).length > 1) return 'severalRectifiers';
  const resistance = findCell(rectifierPackage, findRead(part.package) ?? '', 'toLead', `${id}/package`, 'R_th');
  if (resistance === null) return 'rectifierPackageNotKnown';
  const amperes = parseQuantity(String(only.draws), 'current');
  if (isRefusal(amperes)) return 'rectifierCurrentNotKnown';
  const current = given('typed', amperes.value, 'A', { id: `${id}/current`, name: 'outputCurrent', symbol: 'I', field: reading.field });
  const forward = given(
    'constant',
    FORWARD_V,
    'V',
    {
      id: 'heat/forward-voltage',
      name: 'estimate-forward-voltage',
      symbol: 'V_F',
      source: cite('bench', 'rectifiers drop 0.3 to 1.1 V at their rated current, by kind', 'common-practice'),
    },
    { form: doubtOf({ id: `forward-voltage/${part.id}`, u: rectangular(FORWARD_HALF_V), means: 'forwardVoltage' }) },
  );
  return { at: derive(junction, { lead, forward, current, resistance }, id), forward, current };
}
