import { findQuantity } from './cell-kind.ts';
import type { DecimalMark } from './instrument-file.ts';
import { parseNumber } from './parse-number.ts';
import { findUnit, toSeconds, type Unit } from './parse-unit.ts';
import type { Preamble } from './read-preamble.ts';

/** A start and a step of time as the file states them outside its columns. */
export interface StatedSteps {
  /** The step as written, for the question. */
  readonly text: string;
  /** The bare numbers; null when not stated, or no usable number (Inf, 0). */
  readonly step: number | null;
  readonly start: number | null;
  /** In seconds; null when the unit of time is not stated either. */
  readonly stepS: number | null;
  readonly startS: number | null;
}

const STEP_KEY =
  /^(?:(?:x|t|time|sample|sampling|samp|log|logging|recording|record|horizontal)[ _-]?(?:interval|increment|incr?|period|step)|interval|increment|delta[ _-]?t|Δt|dt|time per sample)$/i;
const RATE_KEY = /^(?:sample|sampling|samp|acquisition|acq)[ _-]?(?:rate|freq(?:uency)?)$/i;
const START_KEY = /^(?:(?:x|t|time)[ _-]?(?:start|origin|zero)|start|t0|start[ _-]?time|horizontal[ _-]?start)$/i;
export const TIME_UNIT_KEY = /^(?:horizontal|x|time|t)(?:[ _-]?axis)?[ _-]?units?$/i;

interface Stated {
  readonly value: number;
  readonly unit: Unit | null;
}

function parseStated(text: string, bracket: string | null, mark: DecimalMark): Stated {
  const quantity = findQuantity(text);
  if (quantity !== null) return { value: parseNumber(quantity.number, mark), unit: quantity.unit };
  return { value: parseNumber(text, mark), unit: bracket === null ? null : findUnit(bracket) };
}

/** Steps stated in the preamble. */
export function findStatedSteps(preamble: Preamble, mark: DecimalMark): StatedSteps | null {
  const stepEntry = preamble.find(STEP_KEY);
  const startEntry = preamble.find(START_KEY);
  const axis = findUnit(preamble.find(TIME_UNIT_KEY)?.value ?? '');
  const start = startEntry === null ? null : parseStated(startEntry.value, startEntry.bracket, mark);
  if (stepEntry !== null) return combine(stepEntry.value, parseStated(stepEntry.value, stepEntry.bracket, mark), start, axis);
  const rateEntry = preamble.find(RATE_KEY);
  if (rateEntry === null) return null;
  const rate = parseStated(rateEntry.value, rateEntry.bracket, mark);
  const isRate = rate.unit !== null && (rate.unit.dimension === 'rate' || rate.unit.dimension === 'frequency');
  if (!isRate || !(rate.value > 0)) return { text: rateEntry.value, step: null, start: null, stepS: null, startS: null };
  const perSecond = rate.value * Number(`1e${rate.unit.power}`);
  return { text: rateEntry.value, step: 1 / perSecond, start: null, stepS: 1 / perSecond, startS: toStart(start, axis) };
}

function combine(text: string, step: Stated, start: Stated | null, axis: Unit | null): StatedSteps {
  const isUsable = step.value > 0 && Number.isFinite(step.value);
  const unit = step.unit ?? axis;
  const isTime = unit !== null && unit.dimension === 'time';
  const startValue = start !== null && Number.isFinite(start.value) ? start.value : null;
  return {
    text,
    step: isUsable ? step.value : null,
    start: startValue,
    stepS: isUsable && isTime ? toSeconds(step.value, unit) : null,
    startS: isTime && start !== null ? toStart({ value: start.value, unit: start.unit ?? unit }, axis) : null,
  };
}

function toStart(start: Stated | null, axis: Unit | null): number | null {
  const unit = start?.unit ?? axis;
  if (start === null || !Number.isFinite(start.value) || unit === null || unit.dimension !== 'time') return null;
  return toSeconds(start.value, unit);
}

const START_HEADING = /^(?:x[ _-]?|t[ _-]?|time[ _-]?)?(?:start|origin)(?:\s*[([](.*)[)\]])?$/i;
const STEP_HEADING = /^(?:x[ _-]?|t[ _-]?|time[ _-]?)?(?:increment|incr?|interval|step)(?:\s*[([](.*)[)\]])?$/i;

export function isStepHeading(name: string): boolean {
  return START_HEADING.test(name) || STEP_HEADING.test(name);
}

/** How many of the names belong to columns: those before a start or an increment that has its value in the row below. */
export function countColumnNames(names: readonly string[], below: readonly string[], width: number): number {
  for (let p = width; p < names.length; p++) {
    if ((below[p] ?? '') !== '' && isStepHeading(names[p]!)) return p;
  }
  return names.length;
}

/** Steps stated beside the headings: their names right of the columns' names, their values in the row below. */
export function findStepsBeside(
  names: readonly string[],
  below: readonly string[],
  width: number,
  mark: DecimalMark,
  preamble: Preamble,
): StatedSteps | null {
  let step: { text: string; stated: Stated } | null = null;
  let start: Stated | null = null;
  for (let p = width; p < names.length; p++) {
    const value = below[p] ?? '';
    if (value === '') continue;
    const asStep = STEP_HEADING.exec(names[p]!);
    const asStart = START_HEADING.exec(names[p]!);
    if (asStep !== null) step ??= { text: value, stated: parseStated(value, asStep[1] ?? null, mark) };
    if (asStart !== null) start ??= parseStated(value, asStart[1] ?? null, mark);
    if (asStep !== null || asStart !== null) preamble.add(names[p]!, value);
  }
  if (step === null) return null;
  return combine(step.text, step.stated, start, findUnit(preamble.find(TIME_UNIT_KEY)?.value ?? ''));
}

/** The seconds of an answer such as "0.001 s"; null when it is no positive time. */
export function toStepAnswer(answer: string): number | null {
  const quantity = findQuantity(answer);
  if (quantity === null || quantity.unit.dimension !== 'time') return null;
  const value = parseNumber(quantity.number, 'point');
  return value > 0 && Number.isFinite(value) ? toSeconds(value, quantity.unit) : null;
}
