import type { Part } from '../../evidence/sample.ts';
import { shuntReference } from '../../table/bench/2026/shunt-reference.ts';
import { findCell, getCell } from '../../table/look-up.ts';
import { type Derived, doubtOf } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import { findRead, openValue } from '../bench/open-value.ts';
import type { MissingValue } from './divider-resistance.ts';

/** What a shunt reference of this marking promises. */
export interface Reference {
  readonly voltage: Derived;
  /** Tolerance as a share; null where it is not known. */
  readonly share: Derived | null;
  readonly pinCurrent: Derived | null;
  readonly pinCurrentMost: Derived | null;
  readonly cathodeLeast: Derived | null;
  readonly bias: Derived | null;
}

/** By the marking: "TL431A", "431", "TLV431"; a letter that is no grade counts as none. */
export function referenceOf(part: Part): Reference | MissingValue {
  const text = findRead<string>(part.marking) ?? findRead<string>(part.value);
  const row = text === null ? null : rowOf(text);
  if (row === null) return { opened: openValue(part.marking), field: `/parts/${part.id}/marking` };
  const at = `circuit/${part.id}`;
  const cell = (column: string, symbol: string): Derived | null => findCell(shuntReference, row, column, `${at}/${column}`, symbol);
  const plain = getCell(shuntReference, row, 'voltage', `${at}/voltage`, 'V_r');
  const share = cell('halfWidth', 'a');
  const u = share === null ? null : rectangular(share.value * plain.value);
  const pin = cell('pinCurrent', 'I_r');
  return {
    voltage: withDoubt(plain, { id: `tolerance/${part.id}`, u, means: 'markedTolerance', args: { part: part.ref } }),
    share,
    pinCurrent: pin === null ? null : withDoubt(pin, { id: `pin-current/${part.id}`, u: rectangular(pin.value), means: 'estimate' }),
    pinCurrentMost: cell('pinCurrentMost', 'I_r'),
    cathodeLeast: cell('cathodeLeast', 'V_k'),
    bias: cell('bias', 'I_k'),
  };
}

function rowOf(text: string): string | null {
  const found = /(V?)431([A-Z]?)/.exec(text.toUpperCase());
  if (found === null) return null;
  if (found[1] === 'V') return 'V431';
  return found[2] === 'A' || found[2] === 'B' ? `431${found[2]}` : '431';
}

function withDoubt(derived: Derived, leaf: Parameters<typeof doubtOf>[0]): Derived {
  const form = doubtOf(leaf);
  return { ...derived, form, step: { ...derived.step, form, u: leaf.u } };
}
