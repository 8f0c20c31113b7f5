import type { ExhibitOf } from '../../evidence/case.ts';
import type { Role } from '../../evidence/instrument.ts';
import type { Value } from '../../evidence/value.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Kind } from '../../quantity/unit.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { type Opened, openValue } from '../bench/open-value.ts';

/** A quantity of a stack with its state; `at` is null unless the state is a reading. */
export interface StackValue {
  readonly field: string;
  readonly opened: Opened<string>;
  readonly at: Derived | null;
}

/** Kinds for which the day says which instrument reads them. */
const READ_WITH: Partial<Record<Kind, Role>> = {
  length: 'distance',
  inductance: 'inductance',
  frequency: 'frequency',
  resistance: 'resistance',
};

/** What a sheet says of a part, and no instrument of the day. */
const FROM_SHEET = /\/switchResistance$/;

/** Places of a stack where nothing at all is a reading: a wire on the wall of the former, a core without a gap. Everywhere else zero cannot be. */
const MAY_BE_ZERO = /\/(?:margins\/[01]|toCore|short|gap|leakage)$/;

/** Whether a number can stand at its place; one that cannot is taken as not read, and told at its place. */
export function canStand(value: number, field: string): boolean {
  return value > 0 || (value === 0 && MAY_BE_ZERO.test(field));
}

/** A reading with the doubt of its instrument, or as stated beside it; without either its doubt is unknown. */
export function readStackValue(
  bench: Bench,
  exhibit: ExhibitOf<'stack'>,
  value: Value<string> | undefined,
  field: string,
  kind: Kind,
  symbol: string,
): StackValue {
  const opened: Opened<string> = exhibit.struck === undefined ? openValue(value) : { state: 'struck', because: exhibit.struck };
  const quantity = opened.state === 'read' ? parseQuantity(opened.v, kind) : null;
  if (opened.state !== 'read' || quantity === null || isRefusal(quantity) || !canStand(quantity.value, field))
    return { field, opened, at: null };
  const role = FROM_SHEET.test(field) ? undefined : READ_WITH[kind];
  if (role !== undefined)
    return {
      field,
      opened,
      at: deriveReading(bench, quantity, {
        field,
        role,
        day: exhibit.day,
        instrument: opened.read.instrument,
        symbol,
        ...(kind === 'length' ? { show: 'millimetres' as const } : {}),
      }),
    };
  const doubt =
    quantity.side === undefined
      ? { form: doubtOf({ id: `stated/${field}`, u: quantity.u, means: quantity.u === null ? 'notStated' : 'stated' }) }
      : { side: quantity.side };
  return { field, opened, at: given('reading', quantity.value, quantity.unit, { id: field, name: 'stackReading', symbol, field }, doubt) };
}

/** A count: exact unless somebody says by how much it may be off. */
export function readCount(exhibit: ExhibitOf<'stack'>, value: Value<string> | undefined, field: string, symbol: string): StackValue {
  const opened: Opened<string> = exhibit.struck === undefined ? openValue(value) : { state: 'struck', because: exhibit.struck };
  const quantity = opened.state === 'read' ? parseQuantity(opened.v, 'ratio') : null;
  if (quantity === null || isRefusal(quantity) || quantity.value <= 0) return { field, opened, at: null };
  const doubt =
    quantity.side !== undefined
      ? { side: quantity.side }
      : quantity.u === null
        ? {}
        : { form: doubtOf({ id: `stated/${field}`, u: quantity.u, means: 'stated' }) };
  return { field, opened, at: given('reading', quantity.value, '1', { id: field, name: 'count', symbol, field }, doubt) };
}
