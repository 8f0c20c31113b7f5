import { findQuantity } from './cell-kind.ts';
import type { DecimalMark, MissingReason } from './instrument-file.ts';
import { BEYOND_ANY_READING, findMissingMark, findMissingNumber } from './missing-mark.ts';
import { parseClock } from './parse-clock.ts';
import { parseNumber } from './parse-number.ts';
import { findUnit, type Unit } from './parse-unit.ts';
import { findScaled } from './scale-letter.ts';
import { findGroupedByApostrophe } from './thousands-mark.ts';

export type RawKind = 'number' | 'clock' | 'half-day' | 'text';

/** How the numbers of a table are written. */
export interface NumberStyle {
  readonly mark: DecimalMark;
  readonly grouping: boolean;
}

const KEPT_ODD_CELLS = 20_000; // cells kept in case the column turns out to be one of words
const KEPT_WORDS = 512; // different words of a text column that share one string
const LONGEST_SHARED = 64; // characters
const GROWTH = 1.5;
const DATE_BASE = 10_000; // each of the three numbers of a date is below this
const POINTS_OF_GROUPS = /^[+\-−]?\d{1,3}(?:\.\d{3})+(?:,\d+)?$/;
const COMMAS_OF_GROUPS = /^[+\-−]?\d{1,3}(?:,\d{3})+(?:\.\d+)?$/;

/** One column while it is being read, row by row; what it means is decided when all rows are known. */
export class RawColumn {
  readonly kind: RawKind;
  /** Whether the rows looked at first were blank here, so that the kind is only assumed. */
  isBlankInSample = false;
  values: Float64Array;
  readonly reasons = new Map<MissingReason, number>();
  /** Cells that are neither value nor known mark. */
  readonly odd = new Map<number, string>();
  oddCount = 0;
  oddExample = '';
  /** The unit behind the numbers, and how many numbers had one, had none, or had one of another quantity. */
  unit: Unit | null = null;
  withUnit = 0;
  bare = 0;
  otherUnits = 0;
  /** Numbers with a letter for a power of ten, already multiplied: "1.5k" is 1500. */
  readonly scaled = new Map<number, string>();
  texts: string[] = [];
  dates: Float64Array;
  orders = 0;
  dated = 0;
  timed = 0;
  twoParts = 0;
  longestParts = 0;
  latestHour = -1;
  halves: Int8Array;
  halved = 0;
  durations = 0;
  private readonly style: NumberStyle;
  private readonly words = new Map<string, string>();

  constructor(kind: RawKind, style: NumberStyle, room: number) {
    this.kind = kind;
    this.style = style;
    const isText = kind === 'text' || kind === 'half-day';
    this.values = new Float64Array(isText ? 0 : room);
    this.dates = new Float64Array(kind === 'clock' ? room : 0);
    this.halves = new Int8Array(kind === 'clock' ? room : 0);
  }

  /** A column of plain numbers that have been read already. */
  static ofNumbers(values: Float64Array, style: NumberStyle): RawColumn {
    const column = new RawColumn('number', style, 0);
    column.values = values;
    column.bare = values.length;
    return column;
  }

  /** Takes a cell; returns false when it is neither a value nor a known mark. */
  take(row: number, cell: string): boolean {
    if (this.kind === 'number') {
      if (row >= this.values.length) this.values = grow(this.values, row);
      const value = parseNumber(cell, this.style.mark);
      if (value < BEYOND_ANY_READING && value > -BEYOND_ANY_READING) {
        this.values[row] = value;
        this.bare++;
        return true;
      }
      return this.takeUncommonNumber(row, cell, value);
    }
    if (this.kind === 'clock') return this.takeClock(row, cell);
    this.texts[row] = this.share(cell);
    return true;
  }

  takeMissing(row: number, reason: MissingReason): void {
    this.reasons.set(reason, (this.reasons.get(reason) ?? 0) + 1);
    if (this.kind === 'text' || this.kind === 'half-day') {
      this.texts[row] = '';
      return;
    }
    if (row >= this.values.length) this.values = grow(this.values, row);
    this.values[row] = Number.NaN;
    if (this.kind === 'clock') this.makeClockRoom(row);
    if (this.kind === 'clock') this.dates[row] = Number.NaN;
  }

  private takeUncommonNumber(row: number, cell: string, value: number): boolean {
    if (!Number.isNaN(value)) {
      this.takeMissing(row, findMissingNumber(value) ?? 'overload');
      return true;
    }
    if (this.style.grouping) {
      const groups = this.style.mark === 'comma' ? POINTS_OF_GROUPS : COMMAS_OF_GROUPS;
      if (groups.test(cell)) {
        this.values[row] = parseNumber(cell.replaceAll(this.style.mark === 'comma' ? '.' : ',', ''), this.style.mark);
        this.bare++;
        return true;
      }
    }
    const grouped = findGroupedByApostrophe(cell);
    if (grouped !== null) {
      const whole = parseNumber(grouped, this.style.mark);
      if (!Number.isNaN(whole)) {
        this.values[row] = whole;
        this.bare++;
        return true;
      }
    }
    const mark = findMissingMark(cell) ?? findMarkWithUnit(cell);
    if (mark !== null) {
      this.takeMissing(row, mark);
      return true;
    }
    if (this.takeQuantity(row, cell) || this.takeScaled(row, cell)) return true;
    this.takeOdd(row, cell);
    return false;
  }

  private takeQuantity(row: number, cell: string): boolean {
    const quantity = findQuantity(cell);
    if (quantity === null) return false;
    const { unit } = quantity;
    const digits = quantity.number;
    this.unit ??= unit;
    if (unit.base !== this.unit.base || unit.said !== this.unit.said) {
      this.otherUnits++;
      return false;
    }
    const value = parseNumber(shiftExponent(digits, unit.power - this.unit.power), this.style.mark);
    if (Number.isNaN(value)) return false;
    if (findMissingNumber(value) !== null) this.takeMissing(row, findMissingNumber(value)!);
    else this.values[row] = value;
    this.withUnit++;
    return true;
  }

  private takeScaled(row: number, cell: string): boolean {
    const scaled = findScaled(cell);
    if (scaled === null) return false;
    const value = parseNumber(shiftExponent(scaled.number, scaled.power), this.style.mark);
    if (Number.isNaN(value)) return false;
    this.values[row] = value;
    this.bare++;
    this.scaled.set(row, cell);
    return true;
  }

  private takeClock(row: number, cell: string): boolean {
    if (row >= this.values.length) this.values = grow(this.values, row);
    this.makeClockRoom(row);
    const clock = parseClock(cell);
    if (clock === null) {
      const mark = findMissingMark(cell);
      if (mark !== null) {
        this.takeMissing(row, mark);
        return true;
      }
      this.takeOdd(row, cell);
      return false;
    }
    this.values[row] = clock.seconds;
    if (!Number.isNaN(clock.seconds)) this.timed++;
    if (clock.date === null) this.dates[row] = Number.NaN;
    else {
      this.dates[row] = (clock.date[0] * DATE_BASE + clock.date[1]) * DATE_BASE + clock.date[2];
      this.orders = this.dated === 0 ? clock.orders : this.orders & clock.orders;
      this.dated++;
    }
    if (clock.twoParts) this.twoParts++;
    if (clock.hour > this.latestHour) this.latestHour = clock.hour;
    if (clock.duration) this.durations++;
    if (clock.half !== null) this.halved++;
    this.halves[row] = clock.half === null ? 0 : clock.half === 'am' ? 1 : 2;
    return true;
  }

  getDate(row: number): readonly [number, number, number] {
    const packed = this.dates[row]!;
    const last = packed % DATE_BASE;
    const rest = (packed - last) / DATE_BASE;
    return [Math.floor(rest / DATE_BASE), rest % DATE_BASE, last];
  }

  private takeOdd(row: number, cell: string): void {
    this.oddCount++;
    this.oddExample ||= cell;
    if (this.odd.size < KEPT_ODD_CELLS) this.odd.set(row, cell);
    this.values[row] = Number.NaN;
    if (this.kind === 'clock') this.dates[row] = Number.NaN;
  }

  private makeClockRoom(row: number): void {
    if (row >= this.dates.length) this.dates = grow(this.dates, row);
    if (row >= this.halves.length) {
      const larger = new Int8Array(Math.ceil((row + 1) * GROWTH));
      larger.set(this.halves);
      this.halves = larger;
    }
  }

  private share(cell: string): string {
    if (cell.length > LONGEST_SHARED) return cell;
    const known = this.words.get(cell);
    if (known !== undefined) return known;
    if (this.words.size < KEPT_WORDS) this.words.set(cell, cell);
    return cell;
  }
}

function grow(values: Float64Array, row: number): Float64Array {
  const larger = new Float64Array(Math.ceil((row + 1) * GROWTH));
  larger.set(values);
  return larger;
}

/** The same digits with another power of ten, so that "980" mV in a column of V is rounded once. */
function shiftExponent(digits: string, shift: number): string {
  if (shift === 0) return digits;
  const at = digits.search(/[eE]/);
  if (at < 0) return `${digits}e${shift}`;
  return `${digits.slice(0, at)}e${Number(digits.slice(at + 1)) + shift}`;
}

/** "OL V", "--- mA". */
function findMarkWithUnit(cell: string): MissingReason | null {
  const parts = /^(\S+) ?(\S+)$/.exec(cell);
  if (parts === null || findUnit(parts[2]!) === null) return null;
  return cell.includes(' ') ? findMissingMark(parts[1]!) : null;
}
