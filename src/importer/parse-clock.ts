/** Clock times, dates and durations, as written: which number is the day is decided for a whole column, never for one cell. */

export type DateOrder = 'year-month-day' | 'day-month-year' | 'month-day-year';

export interface ClockCell {
  /** Three numbers as they stand, with the orders they may be read in; null when there is no date. */
  readonly date: readonly [number, number, number] | null;
  readonly orders: number;
  /** Seconds since midnight, or of the duration; NaN when there is only a date. */
  readonly seconds: number;
  /** Two numbers with one colon: hours and minutes, or minutes and seconds. */
  readonly twoParts: boolean;
  /** The hour as written, for 12-hour clocks. */
  readonly hour: number;
  readonly half: 'am' | 'pm' | null;
  /** True when only a duration is written so ("0d 00:00:00", "1h 2m 3s", an hour above 23). */
  readonly duration: boolean;
}

export const ORDERS: readonly DateOrder[] = ['year-month-day', 'day-month-year', 'month-day-year'];
export const YEAR_FIRST = 1;
export const DAY_FIRST = 2;
export const MONTH_FIRST = 4;

/** Half-day words in the languages exports are set to. */
const MORNING = new Set([
  'am',
  'a.m.',
  'a. m.',
  'vorm.',
  'vm',
  'vm.',
  '上午',
  '午前',
  '오전',
  'fm',
  'dop.',
  'de.',
  'de',
  'π.μ.',
  'πμ',
  'ص',
  'öö',
  'ap.',
]);
const AFTERNOON = new Set([
  'pm',
  'p.m.',
  'p. m.',
  'nachm.',
  'nm',
  'nm.',
  '下午',
  '午後',
  '오후',
  'em',
  'odp.',
  'du.',
  'du',
  'μ.μ.',
  'μμ',
  'م',
  'ös',
  'ip.',
]);

export function findHalfDay(text: string): 'am' | 'pm' | null {
  const word = text.toLowerCase();
  if (MORNING.has(word)) return 'am';
  return AFTERNOON.has(word) ? 'pm' : null;
}

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const YEAR_IN_FRONT = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})(?=$|[T ,])/;
const YEAR_IN_FRONT_CJK = /^(\d{4})年(\d{1,2})月(\d{1,2})日/;
const YEAR_AT_END = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?=$|[T ,])/;
const NAMED_DAY_FIRST = /^(\d{1,2})[-/. ]([A-Za-z]{3})[a-z]*[-/., ]+(\d{4}|\d{2})(?=$|[T ,])/;
const NAMED_MONTH_FIRST = /^([A-Za-z]{3})[a-z]*[-. ](\d{1,2}),? +(\d{4})(?=$|[T ,])/;
const NAMED_YEAR_FIRST = /^(\d{4})-([A-Za-z]{3})-(\d{1,2})(?=$|[T ,])/;
const TIME = /^(\d{1,4}):(\d{1,2})(?::(\d{1,2})(?:([.,:])(\d{1,9}))?)?(?=$|[^\d:.,])/;
const OFFSET = /^ ?(?:Z|UTC|GMT|(?:UTC|GMT)?([+-])(\d{2}):?(\d{2}))$/;
const DAYS_AND_TIME = /^(\d+) ?d(?:ays?)?[ ,]+(\d{1,2}):(\d{2}):(\d{2})(?:[.,](\d{1,9}))?$/i;
const SPELLED =
  /^(?:(\d+) ?d(?:ays?)? ?)?(?:(\d+) ?h(?:rs?|ours?)? ?)?(?:(\d+) ?m(?:in(?:utes?)?)? ?)?(\d+)(?:[.,](\d{1,9}))? ?s(?:ec(?:onds?)?)?$/i;

const LONGEST_CLOCK = 48; // characters
const HOURS_PER_HALF = 12;
const HOURS = 24;
const PARTS_LIMIT = 60; // minutes and seconds
const MINUTE_S = 60;
const HOUR_S = 3600;
const DAY_S = 86400;
const MILLISECOND_DIGITS = 3;
const LAST_TWO_DIGIT = 100;
const CENTURY = 2000; // two-digit years: instruments with exports are younger than 1999

export function parseClock(text: string): ClockCell | null {
  if (text.length > LONGEST_CLOCK || text.length < SHORTEST_CLOCK) return null;
  const long = parseDuration(text);
  if (long !== null) return long;
  const dated = parseDate(text);
  let rest = dated === null ? text : text.slice(dated.length).replace(/^(T|,? *)/, '');
  const date = dated?.date ?? null;
  const orders = dated?.orders ?? 0;
  if (dated !== null && rest === '') return { date, orders, seconds: Number.NaN, twoParts: false, hour: -1, half: null, duration: false };
  let half: 'am' | 'pm' | null = null;
  const before = /^([^\d\s]+) ?(?=\d)/.exec(rest);
  if (before !== null) {
    half = findHalfDay(before[1]!);
    if (half === null) return null;
    rest = rest.slice(before[0].length);
  }
  const time = TIME.exec(rest);
  if (time === null) return null;
  rest = rest.slice(time[0].length);
  const hour = Number(time[1]);
  const minute = Number(time[2]);
  const second = time[3] === undefined ? 0 : Number(time[3]);
  const fraction = time[5] === undefined ? 0 : Number(`0.${time[5]}`);
  if (time[4] === ':' && time[5]!.length !== MILLISECOND_DIGITS) return null;
  if (minute >= PARTS_LIMIT || second >= PARTS_LIMIT) return null;
  const after = rest.trim();
  if (half === null && after !== '') half = findHalfDay(after);
  let offsetS = 0;
  if (after !== '' && (before !== null || half === null)) {
    const offset = OFFSET.exec(rest);
    if (offset === null || dated === null) return null;
    if (offset[1] !== undefined) offsetS = (offset[1] === '-' ? -1 : 1) * (Number(offset[2]) * HOUR_S + Number(offset[3]) * MINUTE_S);
  }
  if (half !== null && hour > HOURS_PER_HALF) return null;
  if (dated !== null && hour >= HOURS) return null;
  const hours = half === null ? hour : (hour % HOURS_PER_HALF) + (half === 'pm' ? HOURS_PER_HALF : 0);
  const seconds = hours * HOUR_S + minute * MINUTE_S + second + fraction - offsetS;
  return { date, orders, seconds, twoParts: time[3] === undefined && dated === null && half === null, hour, half, duration: hour >= HOURS };
}

const SHORTEST_CLOCK = 2;

function parseDuration(text: string): ClockCell | null {
  if (!/\d ?[dhms]/i.test(text)) return null;
  const form = DAYS_AND_TIME.exec(text);
  const spelled = form === null ? SPELLED.exec(text) : null;
  const parts = form ?? spelled;
  if (parts === null) return null;
  const [days, hours, minutes, seconds] = [parts[1], parts[2], parts[3], parts[4]].map((part) => (part === undefined ? 0 : Number(part)));
  const fraction = parts[5] === undefined ? 0 : Number(`0.${parts[5]}`);
  const total = days! * DAY_S + hours! * HOUR_S + minutes! * MINUTE_S + seconds! + fraction;
  return { date: null, orders: 0, seconds: total, twoParts: false, hour: -1, half: null, duration: true };
}

interface DatePart {
  readonly date: readonly [number, number, number];
  readonly orders: number;
  readonly length: number;
}

/** The day before midnight stands in row after row: the last one is remembered. */
let lastDay = '';
let lastPart: DatePart | null = null;

function parseDate(text: string): DatePart | null {
  const space = text.indexOf(' ');
  if (space !== DATE_LENGTH) return findDate(text);
  const day = text.slice(0, DATE_LENGTH);
  if (day !== lastDay) {
    lastPart = findDate(day);
    lastDay = day;
  }
  return lastPart ?? findDate(text);
}

const DATE_LENGTH = 10; // characters of a date with a year of four digits

function findDate(text: string): DatePart | null {
  const year = YEAR_IN_FRONT.exec(text);
  if (year !== null) return part([Number(year[1]), Number(year[3]), Number(year[4])], YEAR_FIRST, year[0].length);
  const cjk = YEAR_IN_FRONT_CJK.exec(text);
  if (cjk !== null) return part([Number(cjk[1]), Number(cjk[2]), Number(cjk[3])], YEAR_FIRST, cjk[0].length);
  const end = YEAR_AT_END.exec(text);
  if (end !== null) {
    const short = end[4]!.length === 2 && end[1]!.length === 2;
    return part([Number(end[1]), Number(end[3]), Number(end[4])], DAY_FIRST | MONTH_FIRST | (short ? YEAR_FIRST : 0), end[0].length);
  }
  const named = NAMED_DAY_FIRST.exec(text);
  if (named !== null) return namedPart(named[3]!, named[2]!, named[1]!, named[0].length);
  const monthFirst = NAMED_MONTH_FIRST.exec(text);
  if (monthFirst !== null) return namedPart(monthFirst[3]!, monthFirst[1]!, monthFirst[2]!, monthFirst[0].length);
  const yearFirst = NAMED_YEAR_FIRST.exec(text);
  if (yearFirst !== null) return namedPart(yearFirst[1]!, yearFirst[2]!, yearFirst[3]!, yearFirst[0].length);
  return null;
}

function part(date: readonly [number, number, number], orders: number, length: number): DatePart | null {
  let possible = 0;
  for (const [i, order] of ORDERS.entries()) {
    if ((orders & (1 << i)) !== 0 && isPossibleDate(date, order)) possible |= 1 << i;
  }
  return possible === 0 ? null : { date, orders: possible, length };
}

function namedPart(year: string, month: string, day: string, length: number): DatePart | null {
  const index = MONTHS.indexOf(month.toLowerCase());
  if (index < 0) return null;
  const full = Number(year) < LAST_TWO_DIGIT ? Number(year) + CENTURY : Number(year);
  return part([full, index + 1, Number(day)], YEAR_FIRST, length);
}

function inOrder(date: readonly [number, number, number], order: DateOrder): [year: number, month: number, day: number] {
  const [a, b, c] = date;
  const [year, month, day] = order === 'year-month-day' ? [a, b, c] : order === 'day-month-year' ? [c, b, a] : [c, a, b];
  return [year < LAST_TWO_DIGIT ? year + CENTURY : year, month, day];
}

const MONTHS_PER_YEAR = 12;

export function isPossibleDate(date: readonly [number, number, number], order: DateOrder): boolean {
  const [year, month, day] = inOrder(date, order);
  if (month < 1 || month > MONTHS_PER_YEAR || day < 1) return false;
  return day <= new Date(Date.UTC(year, month, 0)).getUTCDate();
}

const MILLISECONDS = 1000;

/** Seconds from 1970-01-01 to the midnight the date begins with. */
export function toDayStart(date: readonly [number, number, number], order: DateOrder): number {
  const [year, month, day] = inOrder(date, order);
  return Date.UTC(year, month - 1, day) / MILLISECONDS;
}
