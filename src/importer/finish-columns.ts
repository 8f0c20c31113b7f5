import type { Doubts } from './doubts.ts';
import type { Column } from './instrument-file.ts';
import { findHalfDay } from './parse-clock.ts';
import { findUnit, type Unit } from './parse-unit.ts';
import type { RawColumn } from './raw-column.ts';
import type { Headings } from './read-headings.ts';
import { markSensorCodes } from './sensor-codes.ts';
import { type SettledClock, settleClock } from './settle-clock.ts';
import { settleUnit } from './settle-unit.ts';
import { scaleByTen, takeUnitBeside } from './unit-beside.ts';

export interface FinishedColumns {
  readonly columns: Column[];
  readonly clocks: Map<number, SettledClock>;
  /** The column that counts the samples. */
  readonly sequence: number | null;
  readonly unitAsked: Set<number>;
}

/** The columns as handed over, once all rows are known. */
export function finishColumns(
  raw: readonly RawColumn[],
  rows: number,
  headings: Headings,
  preambleUnits: readonly (Unit | null)[],
  doubts: Doubts,
): FinishedColumns {
  const clocks = new Map<number, SettledClock>();
  const unitAsked = new Set<number>();
  let sequence: number | null = null;
  const isDatedBeside = raw.some((column) => column.dated > 0 && column.timed === 0);
  const columns = raw.map((column, i): Column => {
    const heading = headings.headings[i]!;
    if (column.kind === 'text' || column.kind === 'half-day' || isAllWords(column, rows)) {
      const text = toTextColumn(column, rows, heading.name);
      if (heading.unit !== null || (headings.unitCells[i] ?? '') !== '') askAboutUnitOfWords(text, i, doubts);
      return text;
    }
    askAboutWords(column, i, heading.name, doubts);
    if (column.kind === 'clock') {
      clocks.set(i, settleClock(column, rows, i, heading.name, { halves: findHalves(raw, i), isDatedBeside }, doubts));
      return toColumn(column, rows, heading.name, 's', 'time');
    }
    const before = doubts.open.length;
    const stated = headings.unitCells[i] ?? '';
    const beside = stated === '' ? takeUnitBeside(column, raw[i + 1], headings.headings[i + 1]?.name ?? '', rows) : null;
    const settled = settleUnit(
      column,
      rows,
      i,
      { heading, unitCell: beside?.symbol ?? stated, preamble: preambleUnits[i] ?? null },
      doubts,
    );
    if (doubts.open.length > before) unitAsked.add(i);
    if (settled.counts && sequence === null && isRising(column.values, rows)) sequence = i;
    askAboutLetters(column, settled.unit, i, heading.name, doubts);
    markSensorCodes(column, rows, settled.unit, i, heading.name, doubts);
    return toColumn(column, rows, heading.name, settled.unit?.symbol ?? null, 'number');
  });
  return { columns, clocks, sequence, unitAsked };
}

function isAllWords(column: RawColumn, rows: number): boolean {
  if (!column.isBlankInSample || column.oddCount === 0 || column.odd.size < column.oddCount) return false;
  return countMissing(column.values, rows) === rows;
}

function countMissing(values: Float64Array, rows: number): number {
  let missing = 0;
  for (let row = 0; row < rows; row++) if (Number.isNaN(values[row]!)) missing++;
  return missing;
}

function isRising(values: Float64Array, rows: number): boolean {
  for (let row = 1; row < rows; row++) if (!(values[row]! > values[row - 1]!)) return false;
  return rows > 1;
}

/** Words among numbers: whatever they mean, the person says whether they are missing readings. */
export function askAboutWords(column: RawColumn, index: number, name: string, doubts: Doubts): void {
  if (column.oddCount === 0) return;
  column.reasons.set('text', (column.reasons.get('text') ?? 0) + column.oddCount);
  doubts.ask({
    code: `text-cells:${index}`,
    question: `Column "${name}" has ${column.oddCount} cells that are no number and no known mark, such as "${column.oddExample.slice(0, LONGEST_EXAMPLE)}": are they missing readings?`,
    answers: ['missing'],
    columns: [index],
  });
}

/** "1.5k" under a heading in kΩ is 1.5 kΩ or 1500 kΩ; under one in Ω it is 1500 Ω, and nobody need be asked. */
function askAboutLetters(column: RawColumn, unit: Unit | null, index: number, name: string, doubts: Doubts): void {
  const example = column.scaled.values().next().value;
  if (example === undefined || unit === null || (unit.power === 0 && findUnit(`k${unit.symbol}`) !== null)) return;
  const answer = doubts.ask({
    code: `scale-letter:${index}`,
    question: `Column "${name}" is in ${unit.symbol}, and has numbers with a letter of their own such as "${example}": does the letter multiply that unit, or stand in its place?`,
    answers: ['multiplies', 'in-its-place'],
    columns: [index],
  });
  if (answer !== 'in-its-place') return;
  for (const row of column.scaled.keys()) column.values[row] = scaleByTen(column.values[row]!, -unit.power);
}

/** Readings in a form nobody knows look like words: a column that states a unit is not taken for one of words unasked. */
function askAboutUnitOfWords(column: Column, index: number, doubts: Doubts): void {
  const example = column.texts!.find((text) => text !== '');
  if (example === undefined) return;
  doubts.ask({
    code: `text-column:${index}`,
    question: `Column "${column.name}" states a unit, but holds no number that is understood, only such as "${example.slice(0, LONGEST_EXAMPLE)}": is it a column of words?`,
    answers: ['words'],
    columns: [index],
  });
}

const LONGEST_EXAMPLE = 40; // characters of a cell repeated in a question

/** Morning and afternoon in a column of their own, beside the clock: right of it, or else left. */
function findHalves(raw: readonly RawColumn[], clock: number): ('am' | 'pm' | null)[] | null {
  if (raw[clock]!.halved > 0) return null;
  const beside = [raw[clock + 1], raw[clock - 1]].find((column) => column?.kind === 'half-day');
  return beside === undefined ? null : beside.texts.map((word) => findHalfDay(word));
}

function toTextColumn(column: RawColumn, rows: number, name: string): Column {
  const texts: string[] = [];
  for (let row = 0; row < rows; row++)
    texts.push((column.kind === 'text' || column.kind === 'half-day' ? column.texts[row] : column.odd.get(row)) ?? '');
  const blank = texts.reduce((count, text) => count + (text === '' ? 1 : 0), 0);
  return {
    name,
    unit: null,
    values: new Float64Array(rows).fill(Number.NaN),
    missing: { count: blank, reasons: blank === 0 ? {} : { blank } },
    kind: 'text',
    texts,
    usable: true,
    doubts: [],
  };
}

export function toColumn(column: RawColumn, rows: number, name: string, unit: string | null, kind: 'number' | 'time'): Column {
  const values = column.values.length === rows ? column.values : column.values.slice(0, rows);
  return { name, unit, values, missing: toMissing(column, values), kind, usable: true, doubts: [] };
}

function toMissing(column: RawColumn, values: Float64Array): Column['missing'] {
  const count = countMissing(values, values.length);
  const reasons: Record<string, number> = {};
  let told = 0;
  for (const [reason, times] of column.reasons) {
    reasons[reason] = times;
    told += times;
  }
  // Times left out until a question is settled, or left out because it was.
  if (count > told) reasons['undecided'] = count - told;
  return { count, reasons };
}
