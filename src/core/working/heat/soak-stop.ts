import type { FittedCurve, HeatingChannel } from '../../evidence/computed/heating-curves.ts';
import { cite } from '../../source/source.ts';
import { windingTemperature } from '../../table/iec-62368-1/2018/winding-temperature.ts';
import { findCell } from '../../table/look-up.ts';
import { combine } from '../../trace/combine.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import { ratingOf } from '../board/part-quantity.ts';
import { hottestCase } from '../stop/stop-limits.ts';
import type { HeadingReading } from './heading-facts.ts';

const CLEAR_K = 5; // kelvin below what a part bears at which a soak is ended
const STEEPEST_K_PER_S = 5 / 60; // a slope at which it is ended whatever the temperature: 5 K a minute
const AFTER_ENDS = 1e-9; // share of the rise that stands for "at the end"
const HALVINGS = 60;

/** The temperature at which a soak is to be ended, by place: 95 °C outside, 5 K below what the part bears inside. Null where nobody read what it bears. */
export function soakStop(bench: Bench, { exhibit, place, channel }: HeadingReading): Derived | null {
  if (place.outside === true) return hottestCase().at;
  const id = `heat/${exhibit.id}/${channel.column}/stop`;
  const insulation = findRead(place.windingClass);
  const part = place.part === undefined ? undefined : bench.parts.get(place.part);
  const bears =
    insulation === null
      ? part === undefined
        ? null
        : ratingOf(part, 'temperature', 'temperature', 'T_r').at
      : findCell(windingTemperature, insulation, 'thermocouple', `${id}/winding-limit`, 'T');
  if (bears === null) return null;
  const source = cite('bench', 'a soak is ended 5 K before an inside part reaches what it bears', 'common-practice');
  const clear = given('constant', CLEAR_K, 'ΔK', { id: `${id}/clear`, name: 'stop-clear', symbol: 'd', source });
  return combine(
    {
      kind: 'reduce',
      unit: 'K',
      formula: null,
      symbols: { bears: 'T_r', clear: 'd' },
      moves: { bears: 'up', clear: 'down' },
      compute: (plain) => plain.bears - plain.clear,
    },
    { bears, clear },
    { id, name: 'stopAt', symbol: 'T_s', source },
  );
}

/** True where the soak has to end now: the slope grows, or it is steeper than 5 K a minute. */
export function mustEndNow({ outcome, lastSlope }: HeatingChannel): boolean {
  return outcome === 'rising' || lastSlope > STEEPEST_K_PER_S;
}

/** Height of a fitted curve at a second of the log, K. */
export function heightOf({ outputs, fromS }: Pick<FittedCurve, 'outputs' | 'fromS'>, seconds: number): number {
  const of = (name: string): number => outputs.find((output) => output.name === name)?.value ?? 0;
  const fast = of('fastTimeConstant');
  const gone = seconds - fromS;
  return of('end') - of('rise') * Math.exp(-gone / of('timeConstant')) - (fast > 0 ? of('fastRise') * Math.exp(-gone / fast) : 0);
}

/** The second of the log at which a temperature is reached: along the fitted curve, or along the last slope where the temperature runs away. Null: never. */
export function reachedAt({ fit, outcome, lastAtS, lastK, lastSlope, points }: HeatingChannel, kelvin: number): number | null {
  const passed = points.find(([, height]) => height >= kelvin);
  if (passed !== undefined) return passed[0];
  if (outcome === 'rising') return lastSlope > 0 ? lastAtS + (kelvin - lastK) / lastSlope : null;
  if (fit === undefined) return null;
  const end = fit.outputs.find(({ name }) => name === 'end')!.value;
  if (end <= kelvin) return null;
  const slowest = Math.max(...fit.outputs.filter(({ unit }) => unit === 's').map(({ value }) => value));
  let [before, after] = [fit.toS, fit.toS - slowest * Math.log(AFTER_ENDS)];
  if (heightOf(fit, after) < kelvin) return null;
  for (let k = 0; k < HALVINGS; k += 1) {
    const middle = (before + after) / 2;
    if (heightOf(fit, middle) < kelvin) before = middle;
    else after = middle;
  }
  return after;
}
