import type { FittedCurve, HeatingChannel } from '../evidence/computed/heating-curves.ts';
import { type Refusal, refuse } from '../quantity/refusal.ts';
import { fisherOfTwo, student95 } from '../uncertainty/student.ts';
import { binReadings, type Readings, readingsFrom } from './bin-readings.ts';
import { findBreak, lastLoadStep } from './find-change.ts';
import { type Fitted, fitShape } from './fit-shape.ts';
import { isRising, slopeOf } from './rising-slope.ts';
import { timeNeeded } from './time-needed.ts';

/** One logged place with what was logged beside it. Seconds, kelvin; load in any unit. */
export interface LoggedPlace {
  readonly times: ArrayLike<number>;
  readonly values: ArrayLike<number>;
  readonly ambient: ArrayLike<number> | null;
  readonly load: ArrayLike<number> | null;
  /** One step of the display, K. */
  readonly lastDigit: number;
  /** Half of a 95 % interval asked for, K. */
  readonly withinK: number;
}

type Found = Omit<HeatingChannel, 'column' | 'place'>;
type Change = HeatingChannel['changes'][number];

const FEWEST = 8; // readings for a curve with three parameters and a scatter
const LEAST_SPANS = 0.7; // of a time constant that must be seen; below it end and time constant cannot be told apart in practice
const LEAST_MOVE = 5; // scatters by which the temperature must have moved
const TELLS = 0.25; // share of the rise: an end that is not known to a quarter of it says nothing
const TWO_AT = 0.01; // a second time constant is taken where chance would make it look so good in one log of a hundred
const APART = 2; // times by which two time constants must differ
const AMBIENT_MOVED_K = 1; // half span of the ambient above which it counts as changed
const DRAWN = 240;
const LAST_PART = 8; // the slope shown is that of the last eighth
const MOST_BREAKS = 2;
const KEPT_DIGITS = 7;

/** Where a logged temperature is going, or why the log does not say. */
export function heatingCurve(log: LoggedPlace): Found {
  const all = binReadings(log.times, log.values);
  const last = Math.max(FEWEST, Math.floor(all.t.length / LAST_PART));
  const drawn = binReadings(log.times, log.values, DRAWN);
  const changes: Change[] = [];
  const base = {
    lastDigit: log.lastDigit,
    lastSlope: all.t.length < 2 ? 0 : slopeOf(all, Math.max(0, all.t.length - last), all.t.length).value,
    lastAtS: all.t.at(-1) ?? 0,
    lastK: all.y.at(-1) ?? 0,
    points: Array.from(drawn.t, (t, i): [number, number] => [kept(t), kept(drawn.y[i]!)]),
  };
  const end = (refusal: Refusal): Found => ({
    ...base,
    outcome: 'refused',
    refusal: { code: refusal.code, got: refusal.got, expected: refusal.expected },
    changes,
    ambient: ambientOf(log, 0),
  });
  if (all.t.length < FEWEST) return end(refuse('soak-few-readings', `${all.t.length} readings`, `at least ${FEWEST} readings over time`));
  const step = log.load === null ? null : lastLoadStep(binReadings(log.times, log.load));
  if (step !== null) changes.push({ of: 'load', atS: step });
  let used = step === null ? all : readingsFrom(all, step);
  if (isRising(used)) return { ...base, outcome: 'rising', changes, ambient: ambientOf(log, used.t[0] ?? 0) };
  for (let breaks = 0; ; breaks += 1) {
    const fit = used.t.length < FEWEST ? null : bestShape(used, log.lastDigit);
    const atS = fit === null ? null : findBreak(used, fit);
    if (atS === null) {
      const refusal = whyNot(fit, used, changes);
      if (refusal !== null) return end(refusal);
      const ambient = ambientOf(log, used.t[0]!);
      if (ambient !== null && ambient.half > AMBIENT_MOVED_K) changes.push({ of: 'ambient', atS: used.t[0]! });
      return { ...base, outcome: 'fitted', fit: toFit(fit!, used, log.withinK), changes, ambient };
    }
    if (breaks === MOST_BREAKS)
      return end(
        refuse(
          'soak-no-curve',
          'a temperature that follows no one curve for long',
          'one load, one ambient and one way of cooling for the whole log',
        ),
      );
    changes.push({ of: 'cooling', atS });
    used = readingsFrom(used, atS);
  }
}

/** One time constant, unless a second one explains clearly more. */
function bestShape(used: Readings, lastDigit: number): Fitted | null {
  const one = fitShape(used, 'one', lastDigit);
  const two = fitShape(used, 'two', lastDigit);
  if (one === null || two === null) return one ?? null;
  const squares = (fit: Fitted): number => fit.residuals.reduce((sum, r) => sum + r * r, 0);
  const [slow = 0, fast = 0] = [two.values[2], two.values[4]].sort((a, b) => (b ?? 0) - (a ?? 0));
  if (slow < APART * fast || two.freedom < 1) return one;
  const floor = (lastDigit * lastDigit * used.t.length) / 12; // what rounding alone leaves
  const gain = (squares(one) - squares(two)) / 2 / (Math.max(squares(two), floor) / two.freedom);
  return gain > fisherOfTwo(two.freedom, TWO_AT) ? two : one;
}

function whyNot(fit: Fitted | null, used: Readings, changes: readonly Change[]): Refusal | null {
  const [firstS = 0, lastS = 0] = [used.t[0], used.t.at(-1)];
  const minutes = (seconds: number): string => `${(seconds / 60).toFixed(seconds < 600 ? 1 : 0)} min`;
  const after = changes.length === 0 ? '' : ` since ${changes.at(-1)!.of} changed`;
  const length = `${minutes(lastS - firstS)} of log${after}`;
  if (fit === null) return refuse('soak-too-short', length, 'a log that bends towards its end');
  const [end = 0, rise = 0, timeConstant = 0] = fit.values;
  const moved = Math.abs(fit.at(lastS) - fit.at(firstS));
  if (moved < LEAST_MOVE * (fit.scatter / Math.sqrt(Math.min(fit.readings, FEWEST))))
    return refuse('soak-flat', `a temperature that moves by ${moved.toFixed(2)} K${after}`, 'a log that begins before the unit is warm');
  const slow = Math.max(timeConstant, fit.values[4] ?? 0);
  if (lastS - firstS < LEAST_SPANS * slow)
    return refuse('soak-too-short', length, `at least ${minutes(LEAST_SPANS * slow)}: the time constant looks like ${minutes(slow)}`);
  const half = student95(fit.freedom) * Math.sqrt(fit.covariance[0]![0]!);
  if (half > TELLS * Math.max(Math.abs(rise), Math.abs(end - used.y[0]!)))
    return refuse('soak-does-not-say', `an end of ± ${half.toFixed(1)} K after ${length}`, 'a longer log or a steadier reading');
  return null;
}

const NAMES = ['end', 'rise', 'timeConstant', 'fastRise', 'fastTimeConstant'] as const;
const UNITS = ['K', 'ΔK', 's', 'ΔK', 's'] as const;

/** Digits beyond the seventh come from the order of arithmetic, and differ between engines. */
const kept = (value: number): number => Number(value.toPrecision(KEPT_DIGITS));

function toFit(fit: Fitted, used: Readings, withinK: number): FittedCurve {
  const needed = timeNeeded(fit, used, withinK);
  // the slower body first, whichever the fit found first
  const order = fit.shape === 'two' && fit.values[4]! > fit.values[2]! ? [0, 3, 4, 1, 2] : fit.values.map((_, k) => k);
  return {
    shape: fit.shape,
    outputs: order.map((from, k) => ({ name: NAMES[k]!, value: kept(fit.values[from]!), unit: UNITS[k]! })),
    covariance: order.map((a) => order.map((b) => kept(fit.covariance[a]![b]!))),
    fromS: fit.fromS,
    toS: fit.toS,
    readings: fit.readings,
    bins: fit.bins,
    freedom: fit.freedom,
    scatter: kept(fit.scatter),
    correlation: kept(fit.correlation),
    endWithin: kept(student95(fit.freedom) * Math.sqrt(fit.covariance[0]![0]!)),
    withinK,
    stillNeededS: needed === null ? null : Math.round(needed),
  };
}

function ambientOf({ times, ambient }: LoggedPlace, fromS: number): HeatingChannel['ambient'] {
  if (ambient === null) return null;
  const { y } = readingsFrom(binReadings(times, ambient, DRAWN), fromS);
  if (y.length === 0) return null;
  const [least, most] = [Math.min(...y), Math.max(...y)];
  return { mean: y.reduce((sum, one) => sum + one, 0) / y.length, half: (most - least) / 2 };
}
