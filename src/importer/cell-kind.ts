import { findMissingMark } from './missing-mark.ts';
import { findHalfDay, parseClock } from './parse-clock.ts';
import { parseNumber } from './parse-number.ts';
import { findUnit, type Unit } from './parse-unit.ts';
import { findScaled } from './scale-letter.ts';
import { findGroupedByApostrophe } from './thousands-mark.ts';

/** What a cell is on its own, before anything is known of its column or of the decimal mark. */
export type CellKind = 'blank' | 'number' | 'quantity' | 'mark' | 'clock' | 'half-day' | 'text';

const GROUPED = /^[+-]?\d{1,3}(?:([.,])\d{3})(?:\1\d{3})*(?:[.,]\d+)?$/;
const QUANTITY = /^([+\-−]?(?:\d[\d.,]*|[.,]\d+)(?:[eE][+-]?\d+)?) ?([^\d\s.,+-].*)$/;
const LONGEST_VALUE = 48; // characters; longer cells are words

export function isNumberLike(cell: string): boolean {
  if (cell.length > LONGEST_NUMBER) return false;
  return (
    !Number.isNaN(parseNumber(cell, 'point')) ||
    !Number.isNaN(parseNumber(cell, 'comma')) ||
    GROUPED.test(cell) ||
    findGroupedByApostrophe(cell) !== null
  );
}

const LONGEST_NUMBER = 400; // characters: every double fits in plain digits

export function toCellKind(cell: string): CellKind {
  if (cell === '') return 'blank';
  if (isNumberLike(cell)) return 'number';
  if (cell.length > LONGEST_VALUE) return 'text';
  if (findMissingMark(cell) !== null) return 'mark';
  if (parseClock(cell) !== null) return 'clock';
  if (findHalfDay(cell) !== null) return 'half-day';
  return findQuantity(cell) === null && findScaled(cell) === null ? 'text' : 'quantity';
}

/** A number with its unit behind it, in one cell: "5.02 V". */
export function findQuantity(cell: string): { readonly number: string; readonly unit: Unit } | null {
  if (cell.length > LONGEST_VALUE) return null;
  const parts = QUANTITY.exec(cell);
  if (parts === null || !isNumberLike(parts[1]!)) return null;
  const unit = findUnit(parts[2]!);
  return unit === null ? null : { number: parts[1]!, unit };
}

/** A value, or a mark in the place of one. */
export function isValueKind(kind: CellKind): boolean {
  return kind !== 'text' && kind !== 'blank';
}
