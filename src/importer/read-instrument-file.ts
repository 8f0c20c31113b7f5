import { isRefusal, type Refusal, refuse } from '../core/quantity/refusal.ts';
import { chooseSeparator, sampleLines } from './choose-separator.ts';
import { findUnjoinable, isCommaInConflict, joinDecimalCommas } from './comma-conflict.ts';
import { weighDecimalMark } from './decimal-evidence.ts';
import { decodeText } from './decode-text.ts';
import { Doubts } from './doubts.ts';
import { readFastColumns } from './fast-columns.ts';
import { type Filled, fillColumns } from './fill-columns.ts';
import { findHeader, findTable, type Table } from './find-table.ts';
import { findTimeBase } from './find-time-base.ts';
import { finishColumns } from './finish-columns.ts';
import { getLine, indexLines, type Lines } from './index-lines.ts';
import type { DecimalMark, InstrumentFile, Settled } from './instrument-file.ts';
import { finishMatrix, isMatrix } from './matrix.ts';
import { BEYOND_ANY_READING } from './missing-mark.ts';
import { type NumberStyle, RawColumn } from './raw-column.ts';
import { findPreambleUnits, readCells, readHeadings, readNames } from './read-headings.ts';
import { COMMENT, findPreambleBeside, Preamble } from './read-preamble.ts';
import { refuseBinary, refuseForeign } from './refuse-foreign.ts';
import { dropColumns, type RowReader, readRows } from './row-reader.ts';
import { type SeparatorName, splitCells } from './split-cells.ts';
import { countColumnNames, findStatedSteps, findStepsBeside } from './stated-steps.ts';

export type { Column, Doubt, InstrumentFile, Missing, Settled, TimeBase } from './instrument-file.ts';

/** Changes whenever a reading could change. */
export const IMPORTER_VERSION: string = '1';

const NO_TABLE = 'a text export with a table of readings: rows of numbers with the same number of cells';

/**
 * Reads a text export of a measuring instrument: understood, or asked about, never guessed. What cannot be told from the file stands
 * in `doubts`; the columns it touches are not usable until `settled` answers it.
 */
export function readInstrumentFile(bytes: Uint8Array, settled: Settled = {}): InstrumentFile | Refusal {
  const foreign = refuseForeign(bytes);
  if (foreign !== null) return foreign;
  if (bytes.length >= FAST_FROM) {
    const plain = readPlain(bytes, settled);
    if (plain !== null) return plain;
  }
  const decoded = decodeText(bytes);
  if ('refused' in decoded) return decoded;
  const binary = refuseBinary(decoded.text);
  if (binary !== null) return binary;
  return readText(decoded.text, decoded.encoding, settled);
}

const FAST_FROM = 2_000_000; // bytes; below, the general path takes a blink
const HEAD = 262_144; // bytes that show the layout of a long file

/**
 * A long file of nothing but plain numbers below its heading: the layout is found in its head, the rows are read from the bytes.
 * Null when anything in it is not plain; the general path reads it then, and reads a plain one the same.
 */
function readPlain(bytes: Uint8Array, settled: Settled): InstrumentFile | Refusal | null {
  const headEnd = bytes.lastIndexOf(LF, HEAD) + 1;
  if (headEnd === 0) return null;
  const head = decodeText(bytes.subarray(0, headEnd));
  if ('refused' in head || head.encoding.startsWith('utf-16') || head.text.includes('"') || refuseBinary(head.text) !== null) return null;
  const lines = indexLines(head.text);
  const preamble = new Preamble();
  const found = findWhere(lines, preamble);
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
  const doubts = new Doubts(settled);
  const filled: Filled = { rows: fast.rows, columns, skipped: {}, odd: null, secondHeading: null, tooSparse: false };
  return close(finish({ ...found, table }, filled, style, head.encoding, preamble, doubts), doubts);
}

const LF = 10;

function isNoReading(value: number): boolean {
  return !(Math.abs(value) < BEYOND_ANY_READING);
}

interface Found {
  readonly lines: Lines;
  readonly separator: SeparatorName;
  readonly rows: RowReader;
  readonly table: Table;
  readonly isSkipped: (line: number) => boolean;
  readonly sample: readonly number[];
  readonly isBeside: boolean;
}

function readText(text: string, encoding: string, settled: Settled): InstrumentFile | Refusal {
  const doubts = new Doubts(settled);
  const preamble = new Preamble();
  const lines = indexLines(text);
  const found = findWhere(lines, preamble);
  if (found === null) return refuse('no-table', getLine(lines, 0).trim(), NO_TABLE);
  let { rows, table } = found;
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
      const broken = again === null ? 0 : findUnjoinable(rows, again.firstData, names > 0 ? names : again.width);
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

const SEPARATOR_LINE = /^"?sep=(.)"?\s*$/i; // a hint some exports put first for spreadsheets
const BY_SIGN: Readonly<Record<string, SeparatorName>> = { ',': 'comma', ';': 'semicolon', '\t': 'tab', ' ': 'space' };

function findWhere(lines: Lines, preamble: Preamble): Found | null {
  const hint = SEPARATOR_LINE.exec(getLine(lines, 0));
  const sample = sampleLines(lines).filter((line) => hint === null || line > 0);
  const hinted = hint === null ? undefined : BY_SIGN[hint[1]!];
  const separator = hinted ?? chooseSeparator(lines, sample);
  if (separator === null) return null;
  let rows = readRows(lines, separator);
  const beside = separator === 'space' ? 0 : findPreambleBeside(rows, sample);
  if (beside > 0) {
    const cells: string[] = [];
    for (let line = 0; line < lines.count; line++) {
      const count = rows.read(line, cells);
      if (count > 1 && cells[0] !== '') preamble.add(cells[0]!, cells[1]!);
    }
    rows = dropColumns(rows, beside);
  }
  const isSkipped = (line: number) => (hint !== null && line === 0) || isComment(lines, line, separator);
  const table = findTable(rows, sample, isSkipped);
  if (table === null) return null;
  if (table.headerLines.length > 0 || beside > 0) return { lines, separator, rows, table, isSkipped, sample, isBeside: beside > 0 };
  return { lines, separator, rows, table: withCommentedHeader(lines, rows, table, separator), isSkipped, sample, isBeside: beside > 0 };
}

function isComment(lines: Lines, line: number, separator: SeparatorName): boolean {
  const start = lines.starts[line]!;
  const head = lines.text.slice(start, Math.min(start + COMMENT_LOOK, lines.starts[line + 1]!));
  return COMMENT.test(head) && !(separator === 'semicolon' && head.trimStart().startsWith(';'));
}

const COMMENT_LOOK = 12; // characters that show a comment

/** Names in a comment right above the data: "# time (s), voltage (V)". */
function withCommentedHeader(lines: Lines, rows: RowReader, table: Table, separator: SeparatorName): Table {
  const uncommented: RowReader = {
    count: rows.count,
    read: (line, out) => splitCells(getLine(lines, line).replace(COMMENT, ''), separator, out),
  };
  const header = findHeader(uncommented, table.firstData, table.width, (line) => !isComment(lines, line, separator));
  const last = header.headerLines.at(-1);
  if (last === undefined) return table;
  const names = readCells(uncommented, last);
  if (names.length !== table.width || names.some((name) => /[:=](\s|$)/.test(name))) return table;
  return { ...table, headerLines: [last], unitLine: header.unitLine };
}

/** Columns that are named but blank in the commonest row belong to the table when the rows have a cell for them. */
function widenToHeader(rows: RowReader, table: Table): Table {
  const named = countNamed(rows, table);
  const room = rows.read(table.firstData, []);
  if (named <= table.width || room < named) return table;
  return { ...table, width: named, kinds: [...table.kinds, ...Array<'blank'>(named - table.width).fill('blank')] };
}

function countNamed(rows: RowReader, table: Table): number {
  return countColumnNames(readNames(rows, table), table.unitLine === null ? [] : readCells(rows, table.unitLine), table.width);
}

function readPreambleLines(lines: Lines, rows: RowReader, table: Table, preamble: Preamble): void {
  const isTable = new Set([...table.headerLines, table.unitLine]);
  for (let line = 0; line < table.firstData; line++) {
    if (isTable.has(line)) continue;
    const raw = getLine(lines, line);
    let cells = readCells(rows, line);
    // Above a single column of numbers the preamble may have a separator that the numbers do not need.
    for (const separator of table.width === 1 ? SEPARATORS_OF_KEYS : []) {
      if (cells.length > 1 && separator === 'comma') break;
      const split: string[] = [];
      const count = splitCells(raw, separator, split);
      if (count > 1) {
        cells = split.slice(0, count);
        break;
      }
    }
    preamble.addLine(raw, cells, line + 1);
  }
}

const SEPARATORS_OF_KEYS: readonly SeparatorName[] = ['tab', 'semicolon', 'comma'];

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

function finish(found: Found, filled: Filled, style: NumberStyle, encoding: string, preamble: Preamble, doubts: Doubts): InstrumentFile {
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
  const headings = readHeadings(rows, table, countNamed(rows, table), preamble, doubts);
  const finished = finishColumns(filled.columns, filled.rows, headings, units, doubts);
  const time = findTimeBase(
    {
      ...finished,
      rows: filled.rows,
      stated: beside ?? findStatedSteps(preamble, style.mark),
      mark: style.mark,
      hasHeader: table.headerLines.length > 0,
    },
    doubts,
  );
  // Steps count the rows: while it is open which rows there are, they tell no time.
  const isRowsOpen = doubts.open.some((doubt) => ABOUT_ROWS.has(doubt.code));
  if (isRowsOpen && time.base?.kind === 'steps')
    return { ...common, shape: 'columns', rows: filled.rows, columns: finished.columns, timeBase: null, timeStepS: null };
  if (time.base?.kind === 'column') finished.columns[time.base.column]!.kind = 'time';
  return { ...common, shape: 'columns', rows: filled.rows, columns: finished.columns, timeBase: time.base, timeStepS: time.stepS };
}

const ABOUT_ROWS = new Set(['blank-lines', 'odd-rows', 'second-table', 'decimal-mark', 'names']);
