import type { Part } from '../../evidence/sample.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Kind } from '../../quantity/unit.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { findRead } from '../bench/open-value.ts';

/** A figure from the sheet of a chip, kept in the law of its part; null where it was not entered or is a bound. */
export function lawFigure(part: Part, key: string, kind: Kind, symbol: string): Derived | null {
  const law = findRead<Record<string, unknown>>(part.law as never);
  const text = key
    .split('/')
    .reduce<unknown>((at, name) => (typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[name] : undefined), law);
  const read = typeof text === 'string' ? parseQuantity(text, kind) : null;
  if (read === null || isRefusal(read) || read.side !== undefined) return null;
  const field = `/parts/${part.id}/law/${key}`;
  return given('typed', read.value, read.unit, { id: field, name: 'lawFigure', field, symbol });
}
