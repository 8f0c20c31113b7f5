import type { Doubts } from './doubts.ts';
import { findUnitFor, type Heading, isCountingName, isRatioName } from './name-column.ts';
import { findUnit, UNIT_SYMBOLS, type Unit } from './parse-unit.ts';
import type { RawColumn } from './raw-column.ts';

/** Where a unit of a column may be stated. */
export interface UnitSources {
  readonly heading: Heading;
  /** The cell of the unit row, without brackets; '' when there is none. */
  readonly unitCell: string;
  /** What the preamble says of this column. */
  readonly preamble: Unit | null;
}

const NUMBER_UNIT = findUnit('1');

export interface SettledUnit {
  readonly unit: Unit | null;
  /** True when the column counts samples. */
  readonly counts: boolean;
}

/** The one unit stated for a column of numbers; where none is, or two differ, the person is asked. */
export function settleUnit(raw: RawColumn, rows: number, index: number, sources: UnitSources, doubts: Doubts): SettledUnit {
  const { heading, unitCell } = sources;
  const inRow = unitCell === '' ? null : findUnitFor(unitCell, heading.name);
  const stated = [heading.unit, inRow, raw.withUnit > 0 ? raw.unit : null].filter((unit) => unit !== null);
  if (stated.length === 0 && unitCell === '' && sources.preamble !== null) stated.push(sources.preamble);
  const symbols = new Set(stated.map((unit) => unit.symbol));
  const isUnknownRow = unitCell !== '' && inRow === null && !/^[-–]+$/.test(unitCell);
  const isHalfStated = raw.withUnit > 0 && (raw.bare > 0 || raw.otherUnits > 0);
  if (symbols.size === 1 && !isUnknownRow && !isHalfStated)
    return { unit: stated[0]!, counts: stated[0]!.dimension === 'number' && isWhole(raw, rows) };
  if (symbols.size === 0 && !isUnknownRow) {
    if (isEmpty(raw, rows)) return { unit: null, counts: false };
    if (isCountingName(heading.name) && isWhole(raw, rows)) return { unit: NUMBER_UNIT, counts: true };
    if (isRatioName(heading.name) && isWithinOne(raw, rows, heading.name)) return { unit: NUMBER_UNIT, counts: false };
  }
  const answer = doubts.ask(
    {
      code: `unit:${index}`,
      question: toQuestion(heading.name, [...symbols], isUnknownRow ? unitCell : '', isHalfStated),
      answers: [...UNIT_SYMBOLS],
      columns: [index],
    },
    (given) => findUnit(given) !== null,
  );
  return { unit: answer === null ? null : findUnit(answer), counts: false };
}

function toQuestion(name: string, symbols: readonly string[], unknown: string, isHalfStated: boolean): string {
  if (unknown !== '') return `Column "${name}" has the unit "${unknown}", which is not known to belong to it: which unit is meant?`;
  if (isHalfStated)
    return `Column "${name}" has a unit behind some numbers and none, or another one, behind others: which unit do all have?`;
  if (symbols.length > 1) return `Column "${name}" has more than one unit (${symbols.join(' and ')}): which one is right?`;
  return `Column "${name}" states no unit: which one is it?`;
}

function isEmpty(raw: RawColumn, rows: number): boolean {
  for (let row = 0; row < rows; row++) if (!Number.isNaN(raw.values[row]!)) return false;
  return true;
}

function isWhole(raw: RawColumn, rows: number): boolean {
  for (let row = 0; row < rows; row++) {
    const value = raw.values[row]!;
    if (!Number.isNaN(value) && !Number.isInteger(value)) return false;
  }
  return true;
}

function isWithinOne(raw: RawColumn, rows: number, name: string): boolean {
  if (/crest|^cf$/i.test(name)) return true;
  for (let row = 0; row < rows; row++) if (Math.abs(raw.values[row]!) > 1) return false;
  return true;
}
