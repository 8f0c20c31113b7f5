import type { Doubts } from './doubts.ts';
import type { Column, TimeBase } from './instrument-file.ts';
import { toQuantities } from './name-column.ts';
import { findUnit, toSeconds, type Unit } from './parse-unit.ts';
import type { SettledClock } from './settle-clock.ts';
import { type StatedSteps, toStepAnswer } from './stated-steps.ts';
import { findTimeInParts } from './time-in-parts.ts';
import { type TimeRun, toTimeRun } from './time-steps.ts';
import { toTimes } from './to-times.ts';

export interface TimeQuestion {
  readonly columns: readonly Column[];
  readonly rows: number;
  readonly clocks: ReadonlyMap<number, SettledClock>;
  readonly sequence: number | null;
  readonly stated: StatedSteps | null;
  readonly hasHeader: boolean;
  /** Columns whose unit has just been asked for. */
  readonly unitAsked: ReadonlySet<number>;
}

export interface FoundTime {
  readonly base: TimeBase | null;
  readonly stepS: number | null;
}

const NO_TIME: FoundTime = { base: null, stepS: null };
const FREE_STEP = '<step> s';
const NOT_IN_TIME = 'none';
const STILL_ROWS = 3; // equal times in a row: the clock stands, or is too coarse to tell
const STILL_SHARE = 0.005; // of the rows: shorter stretches of a long table come from printing too few digits
const STILL_MEAN = 1.5; // rows per time value: more, and the times hardly move at all
const STILL_RATIO = 3; // times the usual stretch, for a clock that shows whole seconds or minutes
const AGREEMENT = 0.01; // between the step of the column and the step the preamble states
const LONG_TABLE = 200; // rows; a table this long is a record in time
const TIME_NAME = /^(t|time|(elapsed|step|test|run|relative|total) ?time|elapsed|zeit|temps|timestamp)$/i;
const MEASURED_TIME = /rise|fall|delay|set-?up|hold|width|period|pulse|jitter|on[ -]?time|off[ -]?time|latency|recovery|settling/i;
const CLOCK_START = /^\D{0,12}\d{1,2}:\d{2}/;
const CHANNEL_NAME = /^(ch(an(nel)?)?|trace|math|probe|sensor|tc)[ _-]?\d+$/i;

export function findTimeBase(asked: TimeQuestion, doubts: Doubts): FoundTime {
  const parts = findTimeInParts(asked.columns, asked.rows);
  if (parts !== null) {
    const run = toTimeRun(toTimes({ ...asked, columns: [...asked.columns], timeBase: parts })!);
    // a time that goes back or stands still is asked about column by column, as any other
    if (run.restarts === 0 && run.longestStill < STILL_ROWS) return { base: parts, stepS: run.step };
  }
  const candidates = findCandidates(asked);
  let chosen: { base: TimeBase & { kind: 'column' }; run: TimeRun } | null = null;
  for (const column of candidates) {
    const base = { kind: 'column', column, dateColumn: findDateColumn(asked, column), restarts: 0 } as const;
    const run = toTimeRun(toTimes({ ...asked, columns: [...asked.columns], timeBase: base })!);
    const isGood = run.restarts === 0 && run.missing === 0 && run.longestStill < STILL_ROWS;
    if (chosen === null || isGood) chosen = { base, run };
    if (isGood) break;
  }
  if (chosen !== null) return settleColumn(asked, chosen.base, chosen.run, doubts);
  // The stated step is written with the decimal mark too: it is read once that is known.
  if (asked.stated !== null && doubts.open.some((doubt) => doubt.code === 'decimal-mark')) return NO_TIME;
  if (asked.stated !== null) return settleStated(asked, asked.stated, doubts);
  return askForAny(asked, doubts);
}

function findCandidates(asked: TimeQuestion): number[] {
  const found: number[] = [];
  const dates: number[] = [];
  for (const [i, column] of asked.columns.entries()) {
    const clock = asked.clocks.get(i);
    if (clock !== undefined) {
      (clock.kind === 'date' ? dates : found).push(i);
    } else if (
      column.kind === 'number' &&
      column.unit !== null &&
      findUnit(column.unit)?.dimension === 'time' &&
      column.missing.count < asked.rows
    ) {
      const mayBeBase = i === 0 || /^(x|t)$/i.test(column.name) || toQuantities(column.name).has('time');
      const isNamed = mayBeBase && !MEASURED_TIME.test(column.name);
      if (isNamed && (i === 0 || TIME_NAME.test(column.name) || toTimeRun(column.values).restarts === 0)) found.push(i);
    }
  }
  // Dates without a clock tell the time only where nothing finer does.
  return found.length > 0 ? found : dates;
}

function findDateColumn(asked: TimeQuestion, column: number): number | null {
  if (asked.clocks.get(column)?.kind !== 'time') return null;
  for (const [i, clock] of asked.clocks) if (clock.kind === 'date') return i;
  return null;
}

function settleColumn(asked: TimeQuestion, base: TimeBase & { kind: 'column' }, run: TimeRun, doubts: Doubts): FoundTime {
  const column = asked.columns[base.column]!;
  const isClock = asked.clocks.has(base.column);
  const touched = [base.column, ...(base.dateColumn === null ? [] : [base.dateColumn])];
  if (asked.rows < 2) return { base, stepS: null };
  const known = run.missing < asked.rows;
  const isStill = standsStill(run, asked.rows, isClock);
  if (known && isStill) {
    const question = `Column "${column.name}" stands still for ${run.longestStill} rows: what is the time from row to row ("${NOT_IN_TIME}" if the rows are no record in time)?`;
    return askForStep(question, touched, doubts);
  }
  if (run.missing > 0 && known) {
    doubts.ask({
      code: 'untimed-rows',
      question: `${run.missing} rows have no time in column "${column.name}": are they readings like the others?`,
      answers: ['readings'],
      columns: toNumberColumns(asked),
    });
  }
  if (run.restarts > 0) {
    const isExpected = asked.clocks.get(base.column)?.kind === 'duration' || restartsWithAStep(asked, column);
    if (!isExpected) {
      doubts.ask({
        code: `time-restarts:${base.column}`,
        question: `Column "${column.name}" goes back ${run.restarts === 1 ? 'once' : `${run.restarts} times`}: does a new step begin there?`,
        answers: ['restarts'],
        columns: touched,
      });
    }
    return { base: { ...base, restarts: run.restarts }, stepS: null };
  }
  const stated = asked.stated?.stepS ?? null;
  if (stated !== null && run.step !== null && Math.abs(stated - run.step) > AGREEMENT * run.step) {
    const answer = doubts.ask({
      code: 'time-base',
      question: `The column "${column.name}" steps by ${run.step} s, but the file states a step of ${stated} s: which one is right?`,
      answers: ['column', 'stated'],
      columns: touched,
    });
    if (answer === 'stated') return { base: { kind: 'steps', startS: 0, stepS: stated, sequence: null }, stepS: stated };
    if (answer === null) return { base, stepS: null };
  }
  return { base, stepS: run.step };
}

function standsStill(run: TimeRun, rows: number, isClock: boolean): boolean {
  if (rows - run.missing >= 2 && run.longestStill >= rows - run.missing) return true;
  if (run.longestStill < STILL_ROWS) return false;
  // A clock of whole seconds or minutes repeats itself regularly; a stretch far beyond that is a clock that stopped.
  if (isClock) return run.longestStill > run.typicalStill * STILL_RATIO;
  return run.longestStill >= rows * STILL_SHARE || run.typicalStill >= STILL_MEAN;
}

/** Whether a column that numbers steps changes wherever the time goes back. */
function restartsWithAStep(asked: TimeQuestion, time: Column): boolean {
  const steps = asked.columns.find((column) => /^(step|cycle|segment|phase|run|test)\b/i.test(column.name));
  if (steps === undefined) return false;
  for (let row = 1; row < asked.rows; row++) {
    if (!(time.values[row]! < time.values[row - 1]!)) continue;
    const changes = steps.kind === 'text' ? steps.texts![row] !== steps.texts![row - 1] : steps.values[row] !== steps.values[row - 1];
    if (!changes) return false;
  }
  return true;
}

function settleStated(asked: TimeQuestion, stated: StatedSteps, doubts: Doubts): FoundTime {
  const touched = asked.sequence === null ? [] : [asked.sequence];
  let { stepS, startS } = stated;
  if (stepS === null) {
    const units = stated.step === null ? [] : ['s', 'ms', 'µs', 'ns', 'min', 'h'];
    const answer = doubts.ask(
      {
        code: 'time-base',
        question:
          stated.step === null
            ? `The file states the step of time as "${stated.text}": what is the time from row to row ("${NOT_IN_TIME}" if the rows are no record in time)?`
            : `The file states a step of ${stated.text} from row to row without its unit of time: which unit is it?`,
        answers: [...units, FREE_STEP, NOT_IN_TIME],
        columns: stated.step === null || asked.sequence === null ? toNumberColumns(asked) : touched,
      },
      (given) => toStepAnswer(given) !== null,
    );
    if (answer === null || answer === NOT_IN_TIME) return NO_TIME;
    const free = toStepAnswer(answer);
    const unit: Unit | null = findUnit(answer);
    stepS = free ?? toSeconds(stated.step!, unit!);
    startS = free !== null || stated.start === null ? startS : toSeconds(stated.start, unit!);
  }
  if (asked.sequence === null) return { base: { kind: 'steps', startS: startS ?? 0, stepS, sequence: null }, stepS };
  const counted = asked.columns[asked.sequence]!.values;
  const first = counted[0]!;
  let firstRowS = startS ?? 0;
  if (first !== 0 && startS !== null) {
    const answer = doubts.ask({
      code: 'sequence-start',
      question: `The samples count from ${first}: does the start of ${startS} s belong to sample 0 or to the first row?`,
      answers: ['zero', 'first-row'],
      columns: touched,
    });
    if (answer !== 'first-row') firstRowS = startS + first * stepS;
  }
  const base: TimeBase = { kind: 'steps', startS: firstRowS, stepS, sequence: asked.sequence };
  return { base, stepS: toTimeRun(counted).step === 1 ? stepS : null };
}

function askForAny(asked: TimeQuestion, doubts: Doubts): FoundTime {
  const isUnitAwaited = asked.columns.some((column, i) => {
    const mayBeTime = i === 0 || toQuantities(column.name).has('time');
    return (
      mayBeTime &&
      column.kind === 'number' &&
      asked.unitAsked.has(i) &&
      toTimeRun(column.values).restarts === 0 &&
      column.missing.count === 0
    );
  });
  if (isUnitAwaited || asked.rows < 2) return NO_TIME;
  const unread = asked.columns.findIndex(
    (column) => column.kind === 'text' && CLOCK_START.test(column.texts!.find((text) => text !== '') ?? ''),
  );
  if (unread >= 0) {
    const { name, texts } = asked.columns[unread]!;
    const example = texts!.find((text) => text !== '');
    const question = `Column "${name}" seems to tell the time, but "${example}" is not understood: what is the time from row to row ("${NOT_IN_TIME}" if the rows are no record in time)?`;
    return askForStep(question, [unread], doubts);
  }
  const isRecord =
    asked.sequence !== null ||
    !asked.hasHeader ||
    asked.rows >= LONG_TABLE ||
    asked.columns.some((column) => CHANNEL_NAME.test(column.name));
  if (!isRecord) return NO_TIME;
  const question = `Nothing in the file tells the time of a row: what is the time from row to row ("${NOT_IN_TIME}" if the rows are no record in time)?`;
  return askForStep(question, toNumberColumns(asked), doubts);
}

function askForStep(question: string, columns: number[], doubts: Doubts): FoundTime {
  const answer = doubts.ask(
    { code: 'time-base', question, answers: [FREE_STEP, NOT_IN_TIME], columns },
    (given) => toStepAnswer(given) !== null,
  );
  const stepS = answer === null ? null : toStepAnswer(answer);
  if (stepS === null) return NO_TIME;
  return { base: { kind: 'steps', startS: 0, stepS, sequence: null }, stepS };
}

function toNumberColumns(asked: TimeQuestion): number[] {
  return asked.columns.flatMap((column, i) => (column.kind === 'number' ? [i] : []));
}
