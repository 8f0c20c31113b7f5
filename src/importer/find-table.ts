import { type CellKind, isValueKind, toCellKind } from './cell-kind.ts';
import { findUnit } from './parse-unit.ts';
import type { RowReader } from './row-reader.ts';

/** Where the table stands in the file. Line indices count from 0 here. */
export interface Table {
  /** Cells of a data row, trailing blank ones left out. */
  readonly width: number;
  readonly firstData: number;
  /** Positions that hold values (not words) in the data rows. */
  readonly valuePositions: readonly number[];
  /** Commonest kind of the filled cells per position; `blank` where the sample has none. */
  readonly kinds: readonly CellKind[];
  readonly headerLines: readonly number[];
  readonly unitLine: number | null;
}

const VALUE_SHARE = 0.6; // of the filled cells of a position, for it to be one of values; house choice
const LEADING_TEXT_WEIGHT = 0.2; // rows that begin with a word are rather lines of the preamble
const STRICT_SHARE = 0.2; // of the rows without a single word: then those are the data rows

interface SampledRow {
  readonly line: number;
  readonly kinds: CellKind[];
}

function sampleRow(rows: RowReader, line: number, buffer: string[]): SampledRow {
  const count = rows.read(line, buffer);
  const kinds: CellKind[] = [];
  for (let i = 0; i < count; i++) kinds.push(toCellKind(buffer[i]!));
  while (kinds.length > 0 && kinds.at(-1) === 'blank') kinds.pop();
  return { line, kinds };
}

export function findTable(rows: RowReader, sample: readonly number[], isSkipped: (line: number) => boolean): Table | null {
  const buffer: string[] = [];
  const sampled = sample.map((line) => sampleRow(rows, line, buffer)).filter((row) => row.kinds.some(isValueKind));
  const width = findWidth(sampled);
  if (width === null) return null;
  const full = sampled.filter((row) => row.kinds.length === width);
  const strict = full.filter((row) => !row.kinds.includes('text'));
  const lastIsStrict = strict.length > 0 && strict.at(-1) === sampled.at(-1);
  const typical = strict.length > full.length * STRICT_SHARE || (strict.length > 0 && lastIsStrict) ? strict : full;
  const kinds: CellKind[] = [];
  const valuePositions: number[] = [];
  for (let p = 0; p < width; p++) {
    const kind = commonest(typical.map((row) => row.kinds[p] ?? 'blank'));
    kinds.push(kind.kind);
    if (kind.valueShare >= VALUE_SHARE) valuePositions.push(p);
  }
  if (valuePositions.length === 0) return null;
  const firstData = findFirstData(rows, width, valuePositions, isSkipped);
  if (firstData === null) return null;
  const header = findHeader(rows, firstData, width, isSkipped);
  return { width, firstData, valuePositions, kinds, ...header };
}

function findWidth(sampled: readonly SampledRow[]): number | null {
  const weights = new Map<number, number>();
  for (const row of sampled) {
    const values = row.kinds.filter(isValueKind).length;
    const first = row.kinds.find((kind) => kind !== 'blank');
    const weight = values * (first === 'text' ? LEADING_TEXT_WEIGHT : 1);
    weights.set(row.kinds.length, (weights.get(row.kinds.length) ?? 0) + weight);
  }
  let best: [number, number] | null = null;
  for (const entry of weights) if (best === null || entry[1] > best[1]) best = entry;
  return best === null ? null : best[0];
}

function commonest(kinds: readonly CellKind[]): { kind: CellKind; valueShare: number } {
  const counts = new Map<CellKind, number>();
  let filled = 0;
  let values = 0;
  for (const kind of kinds) {
    if (kind === 'blank') continue;
    filled++;
    if (isValueKind(kind)) values++;
    if (kind !== 'mark') counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  let best: CellKind = filled === 0 ? 'blank' : 'number';
  let most = 0;
  for (const [kind, count] of counts) {
    if (count > most) {
      most = count;
      best = kind;
    }
  }
  return { kind: best, valueShare: filled === 0 ? 0 : values / filled };
}

/** Whether a row has the form of a data row: as wide, beginning with a value where data rows do, and mostly values. */
export function isDataRow(kinds: readonly CellKind[], width: number, valuePositions: readonly number[]): boolean {
  if (kinds.length > width) return false;
  let values = 0;
  let words = 0;
  for (const [nth, position] of valuePositions.entries()) {
    const kind = kinds[position] ?? 'blank';
    if (kind === 'text') {
      if (nth === 0) return false;
      words++;
    } else if (kind !== 'blank') values++;
  }
  return values > words;
}

function findFirstData(
  rows: RowReader,
  width: number,
  valuePositions: readonly number[],
  isSkipped: (line: number) => boolean,
): number | null {
  const buffer: string[] = [];
  let shorter: number | null = null;
  for (let line = 0; line < rows.count; line++) {
    if (isSkipped(line)) continue;
    const { kinds } = sampleRow(rows, line, buffer);
    if (kinds.length === 0) continue;
    if (!isDataRow(kinds, width, valuePositions)) {
      shorter = null;
      continue;
    }
    if (kinds.length === width) return shorter ?? line;
    // A row shorter than the others may be the first one, with its last cells blank; a lone number in the preamble is not.
    if (kinds.length > 1) shorter ??= line;
  }
  return shorter;
}

const FARTHEST_HEADER = 6; // lines above the data that may be header or blank; house choice

interface Header {
  readonly headerLines: readonly number[];
  readonly unitLine: number | null;
}

export function findHeader(rows: RowReader, firstData: number, width: number, isSkipped: (line: number) => boolean): Header {
  let unitLine: number | null = null;
  const names: number[] = [];
  let lower: string[] | null = null;
  for (let line = firstData - 1; line >= Math.max(0, firstData - FARTHEST_HEADER); line--) {
    const cells: string[] = [];
    const count = isSkipped(line) ? 0 : rows.read(line, cells);
    const row = cells.slice(0, count);
    const filled = row.filter((cell) => cell !== '');
    if (filled.length === 0) {
      if (names.length > 0) break;
      continue;
    }
    if (unitLine === null && names.length === 0 && isUnitRow(row) && hasNamesAbove(rows, line, filled.length, isSkipped)) {
      unitLine = line;
      continue;
    }
    if (lower === null ? !isNameRow(row, width) : !isGroupRow(row, lower, width)) break;
    names.unshift(line);
    lower = row;
  }
  return { headerLines: names, unitLine };
}

/** Unit words alone, in brackets or bare; numbers may stand beside them (a start and an increment), names may not. */
export function isUnitRow(row: readonly string[]): boolean {
  let units = 0;
  for (const cell of row) {
    if (cell === '' || cell === '-' || cell === '()' || cell === '[]') continue;
    if (findUnit(stripBrackets(cell)) !== null) units++;
    else if (toCellKind(cell) === 'text' || toCellKind(cell) === 'clock') return false;
  }
  return units > 0;
}

const LONGEST_UNIT_CELL = 48; // characters of a unit with its brackets and blanks

export function stripBrackets(cell: string): string {
  if (cell.length > LONGEST_UNIT_CELL) return cell;
  const inside = /^[([]\s*(.*?)\s*[)\]]$/.exec(cell);
  return inside === null ? cell : inside[1]!;
}

function hasNamesAbove(rows: RowReader, line: number, filled: number, isSkipped: (line: number) => boolean): boolean {
  for (let above = line - 1; above >= 0; above--) {
    if (isSkipped(above)) continue;
    const cells: string[] = [];
    const count = rows.read(above, cells);
    const named = cells.slice(0, count).filter((cell) => cell !== '');
    if (named.length === 0) continue;
    return (
      named.length >= Math.min(filled, 2) &&
      named.every((cell) => toCellKind(cell) === 'text' || findUnit(cell) !== null) &&
      !isUnitRow(named)
    );
  }
  return false;
}

/** Names: words for at least half of the columns (two at least, unless there is only one column). */
function isNameRow(row: readonly string[], width: number): boolean {
  let words = 0;
  let numbers = 0;
  for (const [i, cell] of row.entries()) {
    const kind = toCellKind(cell);
    if (kind === 'text' || kind === 'half-day' || kind === 'mark') words++;
    else if (kind === 'quantity' && i > 0)
      words++; // "5V" names a rail
    else if (kind === 'number' && i > 0) numbers++;
    else if (kind !== 'blank') return false;
  }
  if (numbers > 0) return row[0] !== '' && words + numbers === width && width > 2 && words > numbers;
  return words >= Math.min(2, width) && words * 2 >= Math.min(width, row.length);
}

/** A row of group names above the names: begins blank and has gaps, or tells apart names that are equal. */
function isGroupRow(row: readonly string[], lower: readonly string[], width: number): boolean {
  if (width <= 2 || row.length > lower.length || row.some((cell) => isValueKind(toCellKind(cell)) && toCellKind(cell) !== 'half-day'))
    return false;
  if (row[0] === '' && row.filter((cell) => cell !== '').length >= 1) return true;
  const full = row.every((cell) => cell !== '') && row.length >= width;
  return full && new Set(lower).size < lower.length;
}
