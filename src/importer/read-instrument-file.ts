import { isRefusal, type Refusal, refuse } from '../core/quantity/refusal.ts';
import { findUnjoinable, isCommaInConflict, joinDecimalCommas } from './comma-conflict.ts';
import { isCutShort, ROWS_COMPARED } from './cut-short.ts';
import { weighDecimalMark } from './decimal-evidence.ts';
import { decodeText } from './decode-text.ts';
import { Doubts, type Unasked } from './doubts.ts';
import { readFastColumns } from './fast-columns.ts';
import { type Filled, fillColumns } from './fill-columns.ts';
import { findTable, type Table } from './find-table.ts';
import { findTimeBase } from './find-time-base.ts';
import { finishColumns } from './finish-columns.ts';
import { getLine, indexLines, type Lines } from './index-lines.ts';
import type { DecimalMark, InstrumentFile, Settled, TimeBase } from './instrument-file.ts';
import { askAboutRowsAbove, countNamed, type Located, locateTable, readPreambleLines, widenToHeader } from './locate-table.ts';
import { finishMatrix, isMatrix } from './matrix.ts';
import { BEYOND_ANY_READING } from './missing-mark.ts';
import { type NumberStyle, RawColumn } from './raw-column.ts';
import { findPreambleUnits, readCells, readHeadings, readNames } from './read-headings.ts';
import { Preamble } from './read-preamble.ts';
import { isTiff, readTiff } from './read-tiff.ts';
import { refuseBinary, refuseForeign } from './refuse-foreign.ts';
import type { RowReader } from './row-reader.ts';
import type { SeparatorName } from './split-cells.ts';
import { findStatedSteps, findStepsBeside } from './stated-steps.ts';

export type { Column, Doubt, InstrumentFile, Missing, Settled, TimeBase } from './instrument-file.ts';

const NO_TABLE = 'a text export with a table of readings: rows of numbers with the same number of cells';

/**
 * Reads an export of a measuring instrument, text or a picture of 16-bit numbers: understood, or asked about, never guessed. What cannot be told from the file stands
 * in `doubts`; the columns it touches are not usable until `settled` answers it. An answer that nothing asks for is refused, or left alone
 * where it was kept from an earlier version (`unasked`).
 */
export function readInstrumentFile(bytes: Uint8Array, settled: Settled = {}, unasked: Unasked = 'refuse'): InstrumentFile | Refusal {
  if (isTiff(bytes)) {
    const doubts = new Doubts(settled, unasked);
    const picture = readTiff(bytes, doubts);
    return isRefusal(picture) ? picture : close(picture, doubts);
  }
  const foreign = refuseForeign(bytes);
  if (foreign !== null) return foreign;
  if (bytes.length >= FAST_FROM) {
    const plain = readPlain(bytes, settled, unasked);
    if (plain !== null) return plain;
  }
  const decoded = decodeText(bytes);
  if ('refused' in decoded) return decoded;
  const binary = refuseBinary(decoded.text);
  if (binary !== null) return binary;
  return readText(decoded.text, decoded.encoding, settled, unasked);
}

const FAST_FROM = 2_000_000; // bytes; below, the general path takes a blink
const HEAD = 262_144; // bytes that show the layout of a long file

/**
 * A long file of nothing but plain numbers below its heading: the layout is found in its head, the rows are read from the bytes.
 * Null when anything in it is not plain; the general path reads it then, and reads a plain one the same.
 */
function readPlain(bytes: Uint8Array, settled: Settled, unasked: Unasked): InstrumentFile | Refusal | null {
  const headEnd = bytes.lastIndexOf(LF, HEAD) + 1;
  if (headEnd === 0 || isTailCutShort(bytes)) return null;
  const head = decodeText(bytes.subarray(0, headEnd));
  if ('refused' in head || head.encoding.startsWith('utf-16') || head.text.includes('"') || refuseBinary(head.text) !== null) return null;
  const lines = indexLines(head.text);
  const preamble = new Preamble();
  const found = locateTable(lines, preamble);
  if (found === null || (found.separator !== 'comma' && found.separator !== 'semicolon' && found.separator !== 'tab')) return null;
  const table = widenToHeader(found.rows, found.table);
  const isPlain = table.width >= 2 && table.kinds.every((kind) => kind === 'number') && !found.isBeside;
  if (!isPlain || (found.separator === 'comma' && isCommaInConflict(found.rows, table))) return null;
  const fast = readFastColumns([bytes], {
    separator: found.separator,
    columns: table.width,
    skipLines: table.firstData,
    totalBytes: bytes.length,
  });
  if (isRefusal(fast) || fast.blankLines > 0 || fast.columns.some((column) => column.some(isNoReading))) return null;
  readPreambleLines(lines, found.rows, table, preamble);
  const style: NumberStyle = { mark: 'point', grouping: false };
  const columns = fast.columns.map((values) => RawColumn.ofNumbers(values, style));
  const doubts = new Doubts(settled, unasked);
  askAboutRowsAbove(lines, found, table, doubts);
  const filled: Filled = { rows: fast.rows, columns, skipped: {}, odd: null, secondHeading: null, tooSparse: false };
  return close(finish({ ...found, table }, filled, style, head.encoding, preamble, doubts), doubts);
}

const LF = 10;
const TAIL = 512; // bytes that hold the last few rows

function isTailCutShort(bytes: Uint8Array): boolean {
  if (bytes.at(-1) === LF) return false;
  const rows = new TextDecoder('latin1').decode(bytes.subarray(-TAIL)).split(/\r?\n/).slice(1);
  const lasts = rows.map((row) => row.replace(/[,;\t ]+$/, '').replace(/^.*[,;\t ]/, ''));
  return isCutShort(lasts.at(-1) ?? '', lasts.slice(-1 - ROWS_COMPARED, -1));
}

function isNoReading(value: number): boolean {
  return !(Math.abs(value) < BEYOND_ANY_READING);
}

const WIDEST = 8192; // columns; no bench instrument writes more, and each may raise a question

function readText(text: string, encoding: string, settled: Settled, unasked: Unasked): InstrumentFile | Refusal {
  const doubts = new Doubts(settled, unasked);
  const preamble = new Preamble();
  const lines = indexLines(text);
  const found = locateTable(lines, preamble);
  if (found === null) return refuse('no-table', getLine(lines, 0).trim(), NO_TABLE);
  let { rows, table } = found;
  if (table.width > WIDEST) return refuse('too-wide', `${table.width} columns`, `at most ${WIDEST} columns, as the largest pictures have`);
  let mark: DecimalMark | null = null;
  if (found.separator === 'comma' && isCommaInConflict(rows, table)) {
    mark = doubts.ask({
      code: 'decimal-mark',
      question: 'The comma separates the cells, and may be the decimal mark as well: which is it in the numbers?',
      answers: ['point', 'comma'],
      columns: toAll(table.width),
    }) as DecimalMark | null;
    if (mark === 'comma') {
      const joined = joinDecimalCommas(rows);
      const again = findTable(joined, found.sample, found.isSkipped);
      const names = again === null ? 0 : countNamed(joined, again);
      const broken =
        again === null
          ? 0
          : findUnjoinable(rows, again.firstData, names > again.width ? [again.width, names] : [names > 0 ? names : again.width]);
      if (again === null || broken !== null) {
        return refuse(
          'comma-both',
          getLine(lines, broken ?? 0),
          'the same number of decimal commas in every row; export again with another separator',
          {
            place: `line ${(broken ?? 0) + 1}`,
          },
        );
      }
      rows = joined;
      table = again;
    }
  }
  table = widenToHeader(rows, table);
  readPreambleLines(lines, rows, table, preamble);
  askAboutRowsAbove(lines, { ...found, rows }, table, doubts);
  const style = mark === null ? settleStyle(text, found.separator, rows, table, doubts) : { mark, grouping: false };
  const filled = fill(lines, rows, table, style, doubts);
  if (filled.tooSparse) return refuse('too-sparse', `${table.width} columns`, 'rows that fill the columns of the table');
  if (filled.rows === 0) return refuse('no-table', getLine(lines, table.firstData), NO_TABLE);
  const file = finish({ ...found, rows, table }, filled, style, encoding, preamble, doubts);
  return close(file, doubts);
}

function close(file: InstrumentFile, doubts: Doubts): InstrumentFile | Refusal {
  const refusal = doubts.findRefusal();
  if (refusal !== null) return refusal;
  for (const doubt of file.doubts) {
    for (const index of doubt.columns) {
      const column = file.columns[index];
      if (column === undefined) continue;
      column.usable = false;
      if (!column.doubts.includes(doubt.code)) column.doubts.push(doubt.code);
    }
  }
  return file;
}

function settleStyle(text: string, separator: SeparatorName, rows: RowReader, table: Table, doubts: Doubts): NumberStyle {
  const mayHaveCommas = separator === 'comma' ? text.includes('"') : text.includes(',');
  if (!mayHaveCommas) return { mark: 'point', grouping: false };
  const positions = table.kinds.flatMap((kind, p) => (kind === 'number' || kind === 'quantity' || kind === 'blank' ? [p] : []));
  const evidence = weighDecimalMark(rows, table.firstData, positions);
  if (evidence.doubt === null) return evidence;
  const answer = doubts.ask({
    code: 'decimal-mark',
    question: evidence.doubt.mixed
      ? `Numbers such as ${evidence.doubt.example} use point and comma: which one is the decimal mark?`
      : `Is the comma in numbers such as ${evidence.doubt.example} the decimal mark, or does it group thousands (the point being the decimal mark)?`,
    answers: ['comma', 'point'],
    columns: evidence.columns,
  }) as DecimalMark | null;
  return { mark: answer ?? evidence.mark, grouping: true };
}

function fill(lines: Lines, rows: RowReader, table: Table, style: NumberStyle, doubts: Doubts): Filled {
  let filled = fillColumns(lines, rows, table, { style, endLine: rows.count, isBlankMissing: false });
  const blank = (filled.skipped['blank-row'] ?? 0) + (table.width === 1 ? (filled.skipped['blank-line'] ?? 0) : 0);
  if (blank > 0) {
    const answer = doubts.ask({
      code: 'blank-lines',
      question: `${blank} lines between the readings are blank: is each one a missing reading, or nothing?`,
      answers: ['missing', 'nothing'],
      columns: toAll(table.width),
    });
    if (answer === 'missing') filled = fillColumns(lines, rows, table, { style, endLine: rows.count, isBlankMissing: true });
  }
  if (filled.secondHeading !== null) {
    const { line, text } = filled.secondHeading;
    const answer = doubts.ask({
      code: 'second-table',
      question: `Line ${line + 1} ("${text.trim()}") looks like the heading of another table: read up to there, or go on below it with the same columns?`,
      answers: ['stop', 'continue'],
      columns: toAll(table.width),
    });
    if (answer === 'stop') return fill(lines, { count: line, read: rows.read }, table, style, doubts);
  }
  if (filled.odd !== null) {
    const { count, firstLine, example } = filled.odd;
    doubts.ask({
      code: 'odd-rows',
      question: `${count} rows, first line ${firstLine + 1} ("${example.trim()}"), do not fit the table: may they be left out?`,
      answers: ['leave-out'],
      columns: toAll(table.width),
    });
  }
  return filled;
}

function toAll(width: number): number[] {
  return Array.from({ length: width }, (_, i) => i);
}

function finish(found: Located, filled: Filled, style: NumberStyle, encoding: string, preamble: Preamble, doubts: Doubts): InstrumentFile {
  const { lines, rows, table, separator } = found;
  const names = readNames(rows, table);
  const stepLine = table.unitLine ?? -1;
  const beside = stepLine >= 0 ? findStepsBeside(names, readCells(rows, stepLine), table.width, style.mark, preamble) : null;
  const isPicture = isMatrix(table, filled);
  const units = findPreambleUnits(preamble, table.width, isPicture);
  const common = {
    encoding,
    separator,
    decimalMark: style.mark,
    lineEnd: lines.lineEnd,
    headerRows: table.headerLines.map((line) => line + 1),
    unitRow: table.unitLine === null ? null : table.unitLine + 1,
    firstDataRow: table.firstData + 1,
    preamble: preamble.toRecord(),
    skippedRows: filled.skipped,
    doubts: doubts.open,
  };
  if (isPicture) {
    const picture = finishMatrix(filled, units[0] ?? null, doubts);
    return { ...common, ...picture, shape: 'matrix', timeBase: null, timeStepS: null };
  }
  askAboutScale(preamble, table.width, doubts);
  const headings = readHeadings(rows, table, countNamed(rows, table), preamble, doubts);
  const finished = finishColumns(filled.columns, filled.rows, headings, units, doubts);
  const time = findTimeBase(
    {
      ...finished,
      rows: filled.rows,
      stated: beside ?? findStatedSteps(preamble, style.mark),
      hasHeader: table.headerLines.length > 0,
    },
    doubts,
  );
  if (isTimeOpen(time.base, doubts))
    return { ...common, shape: 'columns', rows: filled.rows, columns: finished.columns, timeBase: null, timeStepS: null };
  if (time.base?.kind === 'column') finished.columns[time.base.column]!.kind = 'time';
  return { ...common, shape: 'columns', rows: filled.rows, columns: finished.columns, timeBase: time.base, timeStepS: time.stepS };
}

const SCALE_KEY = /^(multiplier|(scale|scaling|correction|conversion) ?factor|scaling|gain)$/i;

/** A factor stated above the table is either in the numbers already or not: nobody can tell. */
function askAboutScale(preamble: Preamble, width: number, doubts: Doubts): void {
  const stated = preamble.find(SCALE_KEY);
  if (stated === null || Number(stated.value) === 1) return;
  doubts.ask({
    code: 'scale',
    question: `The file states "${stated.key}: ${stated.value}": do the numbers in the table contain it already?`,
    answers: ['contained'],
    columns: toAll(width),
  });
}

/** Whether an open question could change the times: about the columns they stand in, or about which rows there are. */
function isTimeOpen(base: TimeBase | null, doubts: Doubts): boolean {
  if (base === null) return false;
  const columns =
    base.kind === 'column' ? [base.column, base.dateColumn] : base.kind === 'parts' ? [base.hours, base.minutes, base.seconds] : [];
  return doubts.open.some((doubt) => ABOUT_ROWS.has(doubt.code) || doubt.columns.some((column) => columns.includes(column)));
}

const ABOUT_ROWS = new Set(['blank-lines', 'odd-rows', 'second-table', 'decimal-mark', 'names', 'rows-above']);
