import type { Doubts } from './doubts.ts';
import { DAY_FIRST, type DateOrder, isPossibleDate, MONTH_FIRST, ORDERS, toDayStart, YEAR_FIRST } from './parse-clock.ts';
import type { RawColumn } from './raw-column.ts';

/** What a column of clock times turned out to be. Its values are seconds then. */
export interface SettledClock {
  readonly kind: 'date-and-time' | 'date' | 'time' | 'duration';
}

const DAY_S = 86400;
const HALF_DAY_S = 43200;
const MINUTE_S = 60;
const HOURS = 24;
const HOURS_PER_HALF = 12;
const ORDER_BITS: Readonly<Record<DateOrder, number>> = {
  'year-month-day': YEAR_FIRST,
  'day-month-year': DAY_FIRST,
  'month-day-year': MONTH_FIRST,
};
const DURATION_NAME = /elapsed|duration|dauer|durée|step ?time|run ?time|test ?time|relative|since/i;

export interface ClockNeighbours {
  /** Morning and afternoon, in a column of their own. */
  readonly halves: readonly ('am' | 'pm' | null)[] | null;
  /** Whether another column holds the dates of these times. */
  readonly isDatedBeside: boolean;
}

export function settleClock(
  raw: RawColumn,
  rows: number,
  index: number,
  name: string,
  beside: ClockNeighbours,
  doubts: Doubts,
): SettledClock {
  const { halves } = beside;
  if (raw.dated > 0) {
    const order = settleOrder(raw, rows, index, name, doubts);
    const isTimed = raw.timed > 0;
    if (halves !== null) applyHalves(raw, rows, halves);
    else if (isTimed) askForHalf(raw, rows, index, name, doubts);
    for (let row = 0; row < rows; row++) {
      const isDated = !Number.isNaN(raw.dates[row]!);
      const clock = Number.isNaN(raw.values[row]!) && isDated && !isTimed ? 0 : raw.values[row]!;
      const date = raw.getDate(row);
      raw.values[row] = isDated && isPossibleDate(date, toOrder(order)) ? toDayStart(date, toOrder(order)) + clock : Number.NaN;
    }
    if (isTimed && raw.dated !== raw.timed) askAboutParts(raw, index, name, doubts);
    return { kind: isTimed ? 'date-and-time' : 'date' };
  }
  if (halves !== null) applyHalves(raw, rows, halves);
  if (raw.twoParts > 0) settleTwoParts(raw, rows, index, name, doubts);
  const isDuration = raw.durations > 0 || DURATION_NAME.test(name);
  if (!isDuration) {
    if (halves === null) askForHalf(raw, rows, index, name, doubts);
    if (!beside.isDatedBeside) runOverMidnight(raw, rows);
  }
  return { kind: isDuration ? 'duration' : 'time' };
}

function toOrder(bit: number): DateOrder {
  return ORDERS.find((order) => ORDER_BITS[order] === bit) ?? 'year-month-day';
}

/**
 * One order for the whole column: the one that makes every date exist and, where several do, the only one in which a log runs on
 * evenly over midnight. Otherwise the person is asked.
 */
function settleOrder(raw: RawColumn, rows: number, index: number, name: string, doubts: Doubts): number {
  const possible = ORDERS.filter((order) => (raw.orders & ORDER_BITS[order]) !== 0);
  if (possible.length === 1) return ORDER_BITS[possible[0]!];
  const even = possible.length === 0 ? [] : possible.filter((order) => runsEvenly(raw, rows, order));
  if (even.length === 1 && crossesMidnight(raw, rows)) return ORDER_BITS[even[0]!];
  const example = getFirstDate(raw, rows);
  const answers = possible.length === 0 ? [...ORDERS] : possible;
  const answer = doubts.ask({
    code: `date-order:${index}`,
    question: `Column "${name}" has dates such as ${example}: which number is the day?`,
    answers,
    columns: [index],
  });
  return ORDER_BITS[(answer as DateOrder | null) ?? answers[0]!];
}

function getFirstDate(raw: RawColumn, rows: number): string {
  for (let row = 0; row < rows; row++) if (!Number.isNaN(raw.dates[row]!)) return raw.getDate(row).join(' ');
  return '';
}

const EVEN_TOLERANCE = 0.02; // of a step; house choice

function runsEvenly(raw: RawColumn, rows: number, order: DateOrder): boolean {
  let previous = Number.NaN;
  let step = Number.NaN;
  for (let row = 0; row < rows; row++) {
    if (Number.isNaN(raw.dates[row]!) || Number.isNaN(raw.values[row]!)) return false;
    const at = toDayStart(raw.getDate(row), order) + raw.values[row]!;
    const here = at - previous;
    if (!Number.isNaN(here)) {
      if (!(here > 0)) return false;
      if (!Number.isNaN(step) && Math.abs(here - step) > step * EVEN_TOLERANCE + 1) return false;
      if (Number.isNaN(step)) step = here;
    }
    previous = at;
  }
  return true;
}

const FEWEST_STEPS_IN_A_DAY = 2; // steps inside one day, to compare the step over midnight with

function crossesMidnight(raw: RawColumn, rows: number): boolean {
  let inside = 0;
  let over = 0;
  for (let row = 1; row < rows; row++) {
    if (raw.dates[row] === raw.dates[row - 1]) inside++;
    else over++;
  }
  return over > 0 && inside >= FEWEST_STEPS_IN_A_DAY;
}

function applyHalves(raw: RawColumn, rows: number, halves: readonly ('am' | 'pm' | null)[]): void {
  if (raw.latestHour > HOURS_PER_HALF) return; // a 24-hour clock that says the half of the day as well
  const noon = HOURS_PER_HALF * MINUTE_S * MINUTE_S;
  for (let row = 0; row < rows; row++) {
    const half = halves[row] ?? null;
    const value = raw.values[row]!;
    if (half === null) raw.values[row] = Number.NaN;
    else raw.values[row] = (value >= noon ? value - noon : value) + (half === 'pm' ? noon : 0);
  }
}

/** A clock that goes from 12:59 back to 1:00 counts twelve hours without saying which half of the day. */
function askForHalf(raw: RawColumn, rows: number, index: number, name: string, doubts: Doubts): void {
  if (raw.halved === raw.timed && raw.halved > 0) return;
  const hour = MINUTE_S * MINUTE_S;
  let wraps = raw.halved > 0;
  if (!wraps && raw.latestHour === HOURS_PER_HALF) {
    for (let row = 1; row < rows && !wraps; row++) {
      const [before, here] = [raw.values[row - 1]!, raw.values[row]!];
      wraps = before >= HOURS_PER_HALF * hour && here >= hour && here < 2 * hour;
    }
  }
  if (!wraps) return;
  doubts.ask({
    code: `half-day:${index}`,
    question: `Column "${name}" runs from 12 o'clock to 1 o'clock without saying morning or afternoon: are these times to be left out?`,
    answers: ['leave-out'],
    columns: [index],
  });
  raw.values.fill(Number.NaN, 0, rows);
}

function askAboutParts(raw: RawColumn, index: number, name: string, doubts: Doubts): void {
  doubts.ask({
    code: `date-parts:${index}`,
    question: `Column "${name}" has ${raw.dated} cells with a date and ${raw.timed} with a time of day: are the incomplete ones missing?`,
    answers: ['missing'],
    columns: [index],
  });
}

/** "12:34" is hours and minutes, or minutes and seconds. */
function settleTwoParts(raw: RawColumn, rows: number, index: number, name: string, doubts: Doubts): void {
  let form: string | null = null;
  if (/h{1,2}:mm/i.test(name) || raw.halved > 0) form = 'hh:mm';
  else if (/mm:ss/i.test(name)) form = 'mm:ss';
  if (raw.twoParts !== raw.timed || form === null) {
    form = doubts.ask({
      code: `clock-parts:${index}`,
      question:
        raw.twoParts === raw.timed
          ? `Column "${name}" has times of two numbers: hours and minutes, or minutes and seconds?`
          : `Column "${name}" has times of two numbers beside times of three: what are the two?`,
      answers: raw.twoParts === raw.timed ? ['hh:mm', 'mm:ss'] : ['hh:mm'],
      columns: [index],
    });
  }
  if (form !== 'mm:ss') return;
  for (let row = 0; row < rows; row++) raw.values[row] = raw.values[row]! / MINUTE_S;
}

/** Without dates, a fall by more than half a day is midnight; a smaller one is left for the time base to ask about. */
function runOverMidnight(raw: RawColumn, rows: number): void {
  if (raw.latestHour >= HOURS) return;
  let days = 0;
  let previous = Number.NaN;
  for (let row = 0; row < rows; row++) {
    const here = raw.values[row]!;
    if (Number.isNaN(here)) continue;
    if (previous - here > HALF_DAY_S) days++;
    previous = here;
    raw.values[row] = here + days * DAY_S;
  }
}
