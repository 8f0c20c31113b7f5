import type { Role } from '../../evidence/instrument.ts';
import type { Part } from '../../evidence/sample.ts';
import type { Value } from '../../evidence/value.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Kind } from '../../quantity/unit.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import type { Bench } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';

/** A quantity of a part with its state; `at` is null unless the state is a reading that can be read as that kind. */
export interface PartQuantity {
  readonly field: string;
  readonly opened: Opened<string>;
  readonly at: Derived | null;
}

const WIDE_TOLERANCE = 0.2; // of an electrolytic capacitor, or an NTC at 25 °C, when its marking gives none; common practice
const USUAL_TOLERANCE = 0.1; // of other parts; common practice
const WIDE = new Set(['electrolyticCapacitor', 'ntc']);

/** A rating as the part or its sheet prints it: exact, or a bound where a bound is written. */
export function ratingOf(part: Part, which: keyof NonNullable<Part['rating']>, kind: Kind, symbol: string): PartQuantity {
  const field = `/parts/${part.id}/rating/${which}`;
  const opened = openValue<string>(part.rating?.[which] as Value | undefined);
  const quantity = opened.state === 'read' ? parseQuantity(opened.v, kind) : null;
  if (quantity === null || isRefusal(quantity)) return { field, opened, at: null };
  const doubt = quantity.side === undefined ? {} : { side: quantity.side };
  return { field, opened, at: given('typed', quantity.value, quantity.unit, { id: field, name: `rating-${which}`, field, symbol }, doubt) };
}

/** The value marked on a part with the tolerance that its marking gives, else the usual one. */
export function markedValue(part: Part, kind: Kind, symbol: string): PartQuantity {
  const field = `/parts/${part.id}/value`;
  const opened = openValue<string>(part.value);
  const quantity = opened.state === 'read' ? parseQuantity(opened.v, kind) : null;
  if (quantity === null || isRefusal(quantity)) return { field, opened, at: null };
  const text = findRead(part.rating?.tolerance);
  const tolerance = text === null ? null : parseQuantity(text, 'ratio');
  const share =
    tolerance === null || isRefusal(tolerance)
      ? WIDE.has(findRead(part.kind) ?? '')
        ? WIDE_TOLERANCE
        : USUAL_TOLERANCE
      : Math.abs(tolerance.value);
  const form = doubtOf({
    id: `tolerance/${part.id}`,
    u: quantity.u ?? rectangular(share * quantity.value),
    means: 'markedTolerance',
    args: { part: part.ref },
  });
  const doubt = quantity.side === undefined ? { form } : { side: quantity.side };
  return { field, opened, at: given('typed', quantity.value, quantity.unit, { id: field, name: 'markedValue', field, symbol }, doubt) };
}

/** The value measured on a part, with the doubt of its meter where one is named. */
export function measuredValue(bench: Bench, part: Part, role: Role, kind: Kind, symbol: string): PartQuantity {
  const field = `/parts/${part.id}/measured`;
  const opened = openValue<string>(part.measured);
  const quantity = opened.state === 'read' ? parseQuantity(opened.v, kind) : null;
  if (opened.state !== 'read' || quantity === null || isRefusal(quantity)) return { field, opened, at: null };
  return { field, opened, at: deriveReading(bench, quantity, { field, role, day: undefined, instrument: opened.read.instrument, symbol }) };
}

/** What was measured outranks what is marked. */
export function bestValue(bench: Bench, part: Part, role: Role, kind: Kind, symbol: string): PartQuantity {
  const measured = measuredValue(bench, part, role, kind, symbol);
  return measured.at !== null ? measured : markedValue(part, kind, symbol);
}
