import type { Place } from '../../evidence/sample.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { findRead } from '../bench/open-value.ts';

/** The temperature printed on a plastic, tape, sleeve or wire, or in its sheet; null where nobody read one. */
export function bearsOf({ id, bears }: Place): Derived | null {
  const text = findRead(bears);
  const quantity = text === null ? null : parseQuantity(text, 'temperature');
  if (quantity === null || isRefusal(quantity)) return null;
  const field = `/places/${id}/bears`;
  const doubt = quantity.side === undefined ? {} : { side: quantity.side };
  return given('typed', quantity.value, quantity.unit, { id: field, name: 'rating-temperature', field, symbol: 'T_r' }, doubt);
}
