import { toCellKind } from './cell-kind.ts';
import { chooseSeparator, sampleLines } from './choose-separator.ts';
import type { Doubts } from './doubts.ts';
import { findHeader, findTable, type Table } from './find-table.ts';
import { getLine, type Lines } from './index-lines.ts';
import { readCells, readNames } from './read-headings.ts';
import { COMMENT, findPreambleBeside, type Preamble } from './read-preamble.ts';
import { dropColumns, type RowReader, readRows } from './row-reader.ts';
import { type SeparatorName, splitCells } from './split-cells.ts';
import { countColumnNames } from './stated-steps.ts';

/** The table of a file, and how to read its rows. */
export interface Located {
  readonly lines: Lines;
  readonly separator: SeparatorName;
  readonly rows: RowReader;
  readonly table: Table;
  readonly isSkipped: (line: number) => boolean;
  readonly sample: readonly number[];
  readonly isBeside: boolean;
}

const SEPARATOR_LINE = /^"?sep=(.)"?\s*$/i; // a hint some exports put first for spreadsheets
const BY_SIGN: Readonly<Record<string, SeparatorName>> = { ',': 'comma', ';': 'semicolon', '\t': 'tab', '|': 'bar', ' ': 'space' };

/** Finds separator and table; a preamble beside the samples goes into `preamble`. Null when there is no table. */
export function locateTable(lines: Lines, preamble: Preamble): Located | null {
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
export function widenToHeader(rows: RowReader, table: Table): Table {
  const named = countNamed(rows, table);
  const room = rows.read(table.firstData, []);
  if (named <= table.width || room < named) return table;
  return { ...table, width: named, kinds: [...table.kinds, ...Array<'blank'>(named - table.width).fill('blank')] };
}

export function countNamed(rows: RowReader, table: Table): number {
  return countColumnNames(readNames(rows, table), table.unitLine === null ? [] : readCells(rows, table.unitLine), table.width);
}

export function readPreambleLines(lines: Lines, rows: RowReader, table: Table, preamble: Preamble): void {
  const isTable = new Set([...table.headerLines, table.unitLine]);
  for (let line = 0; line < table.firstData; line++) {
    if (isTable.has(line) || (line === 0 && SEPARATOR_LINE.test(getLine(lines, 0)))) continue;
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

/** A row of numbers above the table that is no part of it may be a reading in a form nobody knows. */
export function askAboutRowsAbove(lines: Lines, found: Located, table: Table, doubts: Doubts): void {
  const isTable = new Set([...table.headerLines, table.unitLine]);
  const lead = table.valuePositions[0]!;
  for (let line = 0; line < table.firstData; line++) {
    if (isTable.has(line) || found.isSkipped(line)) continue;
    const cells = readCells(found.rows, line);
    const kind = toCellKind(cells[lead] ?? '');
    if ((kind !== 'number' && kind !== 'clock') || (lead > 0 && cells.length < table.width)) continue;
    doubts.ask({
      code: 'rows-above',
      question: `Line ${line + 1} ("${getLine(lines, line).trim()}") stands above the table and looks like a reading: is it none?`,
      answers: ['no-reading'],
      columns: Array.from({ length: table.width }, (_, i) => i),
    });
    return;
  }
}
