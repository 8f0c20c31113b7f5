/** The shapes a reading is handed over in. Line numbers count from 1, as an editor shows them; column numbers count from 0. */

/** Answers to doubts, by their code: `{ 'decimal-mark': 'comma', 'unit:2': 'mA', 'time-base': '0.001 s' }`. */
export interface Settled {
  readonly [doubtCode: string]: string;
}

export type DecimalMark = 'point' | 'comma';

/**
 * Why a cell holds no value:
 * - `blank`: nothing stood there;
 * - `overload`: the input was beyond the range (OL, inf, 9.9E37);
 * - `not-a-number-mark`: the instrument wrote its mark for an undefined value (NaN);
 * - `no-reading-mark`: dashes, stars or a word for "none";
 * - `sensor-code`: a number that cannot be a reading of its unit (below absolute zero);
 * - `text`: words in a column of numbers, taken as missing because the person said so;
 * - `cut-off`: the last cell of a file that ends in the middle of a row.
 */
export type MissingReason = 'blank' | 'overload' | 'not-a-number-mark' | 'no-reading-mark' | 'sensor-code' | 'text' | 'cut-off';

export interface Missing {
  count: number;
  reasons: Record<string, number>;
}

export interface Column {
  /** As the file has it, without its unit; two columns may have the same name. Without a header: "column 1", "column 2". */
  name: string;
  /** The file's own unit in its usual symbol ("Volt" is V), "1" for a bare count or ratio, null when not stated (or text). */
  unit: string | null;
  /**
   * Numbers in the file's own unit; NaN is missing. For clock times: seconds. With a date they count from 1970-01-01 00:00 as
   * written (less the offset, where one is written); without, from 00:00 of the first day, running on over midnight.
   */
  values: Float64Array;
  missing: Missing;
  kind: 'number' | 'time' | 'text';
  /** Only for text columns: the cells, '' where blank. */
  texts?: string[];
  /** False while a doubt touches it. */
  usable: boolean;
  /** Codes of the doubts that touch it. */
  doubts: string[];
}

export interface Doubt {
  code: string;
  question: string;
  /** What would settle it. An entry with <...> is a pattern to be filled in ("<step> s"). */
  answers: string[];
  columns: number[];
}

/**
 * What tells the time of a row:
 * - `column`: a column of times (with its date in another column, where it is split);
 * - `parts`: hours, minutes and seconds in three columns;
 * - `steps`: the time of the first row (0 where the file states none) and a step, both in seconds; `sequence` is the column that
 *   counts the samples, where there is one.
 */
export type TimeBase =
  | { kind: 'column'; column: number; dateColumn: number | null; restarts: number }
  | { kind: 'parts'; hours: number; minutes: number; seconds: number }
  | { kind: 'steps'; startS: number; stepS: number; sequence: number | null };

export interface InstrumentFile {
  encoding: string;
  /** `comma`, `semicolon`, `tab`, `space` or `none` (one column). */
  separator: string;
  decimalMark: DecimalMark;
  /** `lf`, `crlf`, `cr`, `mixed`, or `none` for a single line. */
  lineEnd: string;
  headerRows: number[];
  unitRow: number | null;
  firstDataRow: number;
  preamble: Record<string, string>;
  shape: 'columns' | 'matrix';
  rows: number;
  columns: Column[];
  timeBase: TimeBase | null;
  /** The even step of the time base in seconds; null when uneven, unknown or in doubt. */
  timeStepS: number | null;
  /** Rows inside the table that are no data, by reason (`repeated-header`, `summary`, `comment`, `remark`, `blank-line`, `blank-row`). */
  skippedRows: Record<string, number>;
  doubts: Doubt[];
}
