import { type CellKind, toCellKind } from './cell-kind.ts';
import { isCutShort, ROWS_COMPARED } from './cut-short.ts';
import { isDataRow, type Table } from './find-table.ts';
import { getLine, type Lines } from './index-lines.ts';
import { type NumberStyle, RawColumn, type RawKind } from './raw-column.ts';
import type { RowReader } from './row-reader.ts';

/** A row inside the table that fits nowhere and is not known to be harmless. */
export interface OddRows {
  count: number;
  firstLine: number;
  example: string;
}

export interface Filled {
  readonly rows: number;
  readonly columns: RawColumn[];
  readonly skipped: Record<string, number>;
  readonly odd: OddRows | null;
  /** The line of words inside the table, with data after it, that is not its own heading repeated. */
  readonly secondHeading: { readonly line: number; readonly text: string } | null;
  readonly tooSparse: boolean;
}

const SUMMARY_WORDS =
  /^(min(imum)?|max(imum)?|mean|average|avg|aver|std( ?dev)?|stdev|sigma|rms|sum|total|subtotal|summary|statistics?|mittelwert|moyenne|median|range|spread|peak( to peak)?|pk-pk|count)( ?\d+| values?| of .*)?:?$/i;
const HARMLESS_WORDS = /^(end|end of (file|data|record|table|page|step)|eof|page \d+.*|-{3,}.*|={3,}.*|\*{3,})$/i;
const CELLS_PER_CHARACTER = 4; // a table may be this much larger than its text (short rows), or it is refused
const CELLS_ALLOWED = 4_000_000; // cells a small text may always spread out to
const HASH = 35;

function toRawKind(kind: CellKind): RawKind {
  if (kind === 'clock' || kind === 'half-day' || kind === 'text') return kind;
  return 'number';
}

export interface FillOptions {
  readonly style: NumberStyle;
  /** Stop before this line (a second table begins there). */
  readonly endLine: number;
  /** Whether a row of separators only (and a blank line, in a table of one column) is a row whose readings are missing. */
  readonly isBlankMissing: boolean;
}

/** Reads the data rows once, from the first to the end of the file. */
export function fillColumns(lines: Lines, rows: RowReader, table: Table, options: FillOptions): Filled {
  const { width } = table;
  const headings = new Set(
    [...table.headerLines, ...(table.unitLine === null ? [] : [table.unitLine])].map((line) => getLine(lines, line)),
  );
  const room = Math.min(rows.count - table.firstData, Math.ceil(lines.text.length / (width * 2)) + 1);
  const limit = Math.max(CELLS_ALLOWED, lines.text.length * CELLS_PER_CHARACTER) / width;
  const columns = table.kinds.map((kind) => new RawColumn(toRawKind(kind), options.style, room));
  for (const [p, column] of columns.entries()) column.isBlankInSample = table.kinds[p] === 'blank';
  const skipped: Record<string, number> = {};
  const skip = (reason: string) => {
    skipped[reason] = (skipped[reason] ?? 0) + 1;
  };
  const cells: string[] = [];
  const lead = table.valuePositions[0]!;
  const leadIsNumber = columns[lead]!.kind === 'number';
  let odd: OddRows | null = null;
  let secondHeading: Filled['secondHeading'] = null;
  const pending: { line: number; text: string }[] = [];
  let row = 0;
  let blanks = 0;
  let blankRows = 0;
  let shortRows = 0;
  const takeOddRow = (line: number, text: string) => {
    odd ??= { count: 0, firstLine: line, example: text };
    odd.count++;
  };
  for (let line = table.firstData; line < options.endLine; line++) {
    const raw = rows.read(line, cells);
    let count = raw;
    while (count > 0 && cells[count - 1] === '') count--;
    if (count === 0) {
      if (raw > 1) blankRows++;
      else blanks++;
      continue;
    }
    if (lines.text.charCodeAt(lines.starts[line]!) === HASH) {
      skip('comment');
      continue;
    }
    const leading = lead < count ? cells[lead]! : '';
    const first = leading.charCodeAt(0);
    const isPlainLead =
      leadIsNumber &&
      (leading === '' || (first >= DIGIT_0 && first <= DIGIT_9) || first === MINUS || first === PLUS || first === SPARE_POINT);
    if (!isPlainLead || count > width || (count === 1 && width > 1)) {
      const text = getLine(lines, line);
      if (headings.has(text)) {
        skip('repeated-header');
        continue;
      }
      const kinds = cells.slice(0, count).map(toCellKind);
      if (!isDataRow(kinds, width, table.valuePositions)) {
        const firstWord = cells.find((cell) => cell !== '')!;
        if (raw > 1 && SUMMARY_WORDS.test(firstWord)) skip('summary');
        else if (count === 1 && HARMLESS_WORDS.test(firstWord)) skip('remark');
        else if (kinds.every((kind) => kind === 'text' || kind === 'blank') && kinds.filter((kind) => kind === 'text').length > 1)
          pending.push({ line, text });
        else takeOddRow(line, text);
        continue;
      }
    }
    const asRows = options.isBlankMissing ? blankRows + (width === 1 ? blanks : 0) : 0;
    for (let n = 0; n < asRows && row < limit; n++, row++) for (const column of columns) column.takeMissing(row, 'blank');
    if (!options.isBlankMissing) for (; blankRows > 0; blankRows--) skip('blank-row');
    if (asRows === 0 || width > 1) for (; blanks > 0; blanks--) skip('blank-line');
    blanks = 0;
    blankRows = 0;
    for (const heading of pending) secondHeading ??= heading;
    if (row >= limit) return { rows: row, columns, skipped, odd, secondHeading, tooSparse: true };
    const isLast = line === rows.count - 1 && !lines.closed && row > 0;
    const isCutOff =
      isLast &&
      ((count < width && shortRows === 0) ||
        (columns[count - 1]!.kind === 'number' && isCutShort(cells[count - 1]!, readAbove(rows, line, count - 1))));
    if (count < width) shortRows++;
    for (let p = 0; p < width; p++) {
      const column = columns[p]!;
      if (isCutOff && p === count - 1) column.takeMissing(row, 'cut-off');
      else if (p >= count || cells[p] === '') column.takeMissing(row, 'blank');
      else column.take(row, cells[p]!);
    }
    row++;
  }
  // Words after the last data row hold no reading that could be mistaken, but may say something about all of them.
  for (const heading of pending) if (secondHeading === null) takeOddRow(heading.line, heading.text);
  return { rows: row, columns, skipped, odd, secondHeading, tooSparse: false };
}

/** The cells above one, in its column. */
function readAbove(rows: RowReader, line: number, position: number): string[] {
  const above: string[] = [];
  for (let n = 1; n <= ROWS_COMPARED && line - n >= 0; n++) {
    const cells: string[] = [];
    const count = rows.read(line - n, cells);
    const cell = position < count ? cells[position]! : '';
    if (/^[+-]?[.,]?\d/.test(cell)) above.push(cell);
  }
  return above;
}

const DIGIT_0 = 0x30;
const DIGIT_9 = 0x39;
const MINUS = 0x2d;
const PLUS = 0x2b;
const SPARE_POINT = 0x2e;
