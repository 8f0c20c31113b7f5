import { type Refusal, refuse } from '../core/quantity/refusal.ts';
import { EXACT_INTEGER, EXACT_POWER, POWERS } from './parse-number.ts';

/** Plain numbers at full speed: rows of equally many numbers, a point for the decimal mark, nothing missing, nothing quoted. */
export interface FastOptions {
  readonly separator: 'comma' | 'semicolon' | 'tab';
  /** Numbers in every row; blank cells behind them are allowed. */
  readonly columns: number;
  /** Lines before the first row (headings). */
  readonly skipLines?: number;
  /** All bytes there are, where known: the arrays then fit at once instead of growing. */
  readonly totalBytes?: number;
}

export interface FastTable {
  readonly rows: number;
  readonly columns: Float64Array[];
  /** Blank lines passed over. */
  readonly blankLines: number;
}

const SEPARATORS: Readonly<Record<FastOptions['separator'], number>> = { comma: 44, semicolon: 59, tab: 9 };
const FIRST_ROOM = 65_536; // rows, when the size is not known
const GROWTH = 1.5;
const GUESS_ROWS = 1000; // rows whose mean length tells how many rows the whole holds
const GUESS_MARGIN = 1.02; // on that number
const LONGEST_ROW = 1_048_576; // bytes; a longer one is no row of plain numbers
const LF = 10;
const CR = 13;
const SPACE = 32;
const TAB = 9;
const ZERO = 0x30;
const NINE = 9;
const TEN = 10;
const PLUS = 0x2b;
const MINUS = 0x2d;
const POINT = 0x2e;
const LOWER_E = 0x65;
const CASE_BIT = 0x20; // turns E into e
const EXPONENT_CAP = 100_000;

/**
 * Reads byte chunks (cut anywhere) into one array per column, each number rounded exactly as `Number()` rounds it. Memory stays
 * constant beyond the arrays. A row that is not plain is a refusal with its line: read the file by the general path then.
 */
export function readFastColumns(chunks: Iterable<Uint8Array>, options: FastOptions): FastTable | Refusal {
  const reader = new PlainRows(options);
  let carried = new Uint8Array(0);
  for (const chunk of chunks) {
    let from = 0;
    if (carried.length > 0) {
      const end = chunk.indexOf(LF);
      const piece = end < 0 ? chunk : chunk.subarray(0, end + 1);
      if (carried.length + piece.length > LONGEST_ROW) return refuseLine(reader, 'a row of more than a million bytes');
      carried = join(carried, piece);
      if (end < 0) continue;
      if (!reader.take(carried, 0, carried.length)) return refuseLine(reader, reader.got);
      carried = new Uint8Array(0);
      from = end + 1;
    }
    const last = chunk.lastIndexOf(LF);
    if (last >= from && !reader.take(chunk, from, last + 1)) return refuseLine(reader, reader.got);
    carried = chunk.slice(Math.max(from, last + 1));
    if (carried.length > LONGEST_ROW) return refuseLine(reader, 'a row of more than a million bytes');
  }
  if (carried.length > 0 && !reader.take(join(carried, new Uint8Array([LF])), 0, carried.length + 1)) return refuseLine(reader, reader.got);
  return { rows: reader.rows, blankLines: reader.blankLines, columns: reader.columns.map((column) => column.subarray(0, reader.rows)) };
}

function join(a: Uint8Array, b: Uint8Array): Uint8Array<ArrayBuffer> {
  const joined = new Uint8Array(a.length + b.length);
  joined.set(a);
  joined.set(b, a.length);
  return joined;
}

function refuseLine(reader: PlainRows, got: string): Refusal {
  return refuse('not-plain', got, `${reader.columns.length} plain numbers in every row`, { place: `line ${reader.line + 1}` });
}

class PlainRows {
  readonly columns: Float64Array[];
  rows = 0;
  /** Lines taken so far, skipped and blank ones too. */
  line = 0;
  got = '';
  blankLines = 0;
  private readonly separator: number;
  private readonly totalBytes: number | undefined;
  private toSkip: number;
  private room: number;
  private taken = 0;

  constructor(options: FastOptions) {
    this.separator = SEPARATORS[options.separator];
    this.totalBytes = options.totalBytes;
    this.toSkip = options.skipLines ?? 0;
    this.room = options.totalBytes === undefined ? FIRST_ROOM : GUESS_ROWS;
    this.columns = Array.from({ length: options.columns }, () => new Float64Array(this.room));
  }

  /** Takes whole lines; false when one is not plain (its text is in `got`). */
  take(bytes: Uint8Array, start: number, end: number): boolean {
    const { separator, columns } = this;
    const width = columns.length;
    let at = start;
    while (at < end) {
      const lineStart = at;
      if (this.toSkip > 0) {
        at = bytes.indexOf(LF, at) + 1;
        this.toSkip--;
        this.line++;
        continue;
      }
      let code = bytes[at]!;
      while (code === SPACE || code === CR || (code === TAB && separator !== TAB)) code = bytes[++at]!;
      if (code === LF) {
        at++;
        this.line++;
        this.blankLines++;
        continue;
      }
      if (this.rows >= this.room) this.makeRoom(this.taken + at - start);
      for (let p = 0; p < width; p++) {
        let negative = false;
        const numberStart = at;
        if (code === MINUS || code === PLUS) {
          negative = code === MINUS;
          code = bytes[++at]!;
        }
        let mantissa = 0;
        let scale = 0;
        let digitsFrom = at;
        let digit = code - ZERO;
        while (digit >= 0 && digit <= NINE) {
          mantissa = mantissa * TEN + digit;
          code = bytes[++at]!;
          digit = code - ZERO;
        }
        let digits = at - digitsFrom;
        if (code === POINT) {
          code = bytes[++at]!;
          digit = code - ZERO;
          digitsFrom = at;
          while (digit >= 0 && digit <= NINE) {
            mantissa = mantissa * TEN + digit;
            code = bytes[++at]!;
            digit = code - ZERO;
          }
          digits += at - digitsFrom;
          scale = digitsFrom - at;
        }
        if (digits === 0) return this.refuseRow(bytes, lineStart);
        if ((code | CASE_BIT) === LOWER_E) {
          code = bytes[++at]!;
          const minus = code === MINUS;
          if (minus || code === PLUS) code = bytes[++at]!;
          digit = code - ZERO;
          if (!(digit >= 0 && digit <= NINE)) return this.refuseRow(bytes, lineStart);
          let exponent = 0;
          while (digit >= 0 && digit <= NINE) {
            if (exponent < EXPONENT_CAP) exponent = exponent * TEN + digit;
            code = bytes[++at]!;
            digit = code - ZERO;
          }
          scale += minus ? -exponent : exponent;
        }
        let value: number;
        if (mantissa <= EXACT_INTEGER && scale >= -EXACT_POWER && scale <= EXACT_POWER) {
          value = scale < 0 ? mantissa / POWERS[-scale]! : mantissa * POWERS[scale]!;
          if (negative) value = -value;
        } else value = Number(toText(bytes, numberStart, at));
        columns[p]![this.rows] = value;
        while (code === SPACE || code === CR || (code === TAB && separator !== TAB)) code = bytes[++at]!;
        if (p < width - 1) {
          if (code !== separator) return this.refuseRow(bytes, lineStart);
          code = bytes[++at]!;
          while (code === SPACE || (code === TAB && separator !== TAB)) code = bytes[++at]!;
        }
      }
      while (code === separator || code === SPACE || code === CR) code = bytes[++at]!;
      if (code !== LF) return this.refuseRow(bytes, lineStart);
      at++;
      this.rows++;
      this.line++;
    }
    this.taken += end - start;
    return true;
  }

  private makeRoom(takenBytes: number): void {
    const guessed = this.totalBytes === undefined ? 0 : Math.ceil((this.totalBytes / takenBytes) * this.rows * GUESS_MARGIN) + 1;
    this.room = Math.max(guessed, Math.ceil(this.room * (this.totalBytes === undefined ? GROWTH : GUESS_MARGIN)) + 1);
    for (const [p, column] of this.columns.entries()) {
      const larger = new Float64Array(this.room);
      larger.set(column);
      this.columns[p] = larger;
    }
  }

  private refuseRow(bytes: Uint8Array, lineStart: number): false {
    const end = bytes.indexOf(LF, lineStart);
    this.got = toText(bytes, lineStart, Math.min(end < 0 ? bytes.length : end, lineStart + LONGEST_SHOWN)).replace(/\r$/, '');
    return false;
  }
}

const LONGEST_SHOWN = 100; // bytes of a refused row

function toText(bytes: Uint8Array, start: number, end: number): string {
  let text = '';
  for (let i = start; i < end; i++) text += String.fromCharCode(bytes[i]!);
  return text;
}
