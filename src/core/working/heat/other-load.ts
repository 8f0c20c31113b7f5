import { derive } from '../../formula/derive.ts';
import { atOtherLoad } from '../../formula/thermal/at-other-load.ts';
import { exponentOfLoss } from '../../formula/thermal/exponent-of-loss.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given, withNotes } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import type { Bench } from '../bench/bench.ts';
import { findCondition } from '../bench/conditions-of.ts';
import { lossAt } from '../load/loss-at.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import type { SpotReading } from './spot-facts.ts';

const EXPONENT = 0.9;
const EXPONENT_HALF = 0.15; // 1 by conduction, 0.8 by free convection, and parts whose share of the loss grows or falls
const FARTHEST = 2.5; // times the loss of the reading that it is carried to
const APART = 1.3; // times two losses differ at least to tell an exponent
const SETTLED_S = 30 * 60; // as every temperature that passes

interface AtLoad {
  readonly reading: SpotReading;
  readonly temperature: Derived;
  readonly ambient: Derived;
  readonly loss: Derived;
}

/**
 * Parts that were only read at a lesser load, carried to the worst load that the unit holds inside its window: its claim where it holds that, else
 * what it held. Only for a unit with one output, from losses of its own sweep (input less output), and never to a state that it cannot hold. A part
 * read at that load is left alone: a reading outranks what is worked out. Cover and ambient stay those of the reading.
 */
export function carriedToLoad(_: Bench, levels: readonly LevelFacts[], spots: readonly SpotReading[]): SpotReading[] {
  const [level] = levels;
  const held = level?.nearest.find((run) => run.held !== null && run.held.side === undefined);
  if (level === undefined || levels.length !== 1 || held?.held === undefined || held.held === null) return [];
  const reached = level.claim !== null && held.held.value >= level.claim.value;
  const target = reached && level.claim !== null ? level.claim : held.held;
  const then = lossAt(held.sweep, target, 'heat/loss-then');
  if (then === null || then.value <= 0) return [];
  const byPlace = new Map<string, SpotReading[]>();
  for (const spot of spots) byPlace.set(spot.place.id, [...(byPlace.get(spot.place.id) ?? []), spot]);
  return [...byPlace].flatMap(([place, readings]) => {
    if (readings.some(({ state, temperature }) => (state === 'labelLoad' || state === 'worstSustained') && temperature !== null)) return [];
    const known = readings
      .flatMap((reading, index) => atLoad(held.sweep, level, reading, `heat/${place}/${index + 1}/loss`) ?? [])
      .toSorted((a, b) => a.loss.value - b.loss.value);
    const nearest = known.at(-1);
    if (nearest === undefined || nearest.loss.value >= then.value || nearest.loss.value * FARTHEST < then.value) return [];
    const exponent = exponentOf(place, known);
    const { reading, temperature, ambient, loss } = nearest;
    const at = derive(atOtherLoad, { temperature, ambient, loss, lossThen: then, exponent }, `heat/${place}/at-other-load`);
    const loads = (reading.under.loads ?? []).map((load) => ({ ...load, draws: `${Number(target.value.toPrecision(4))} A` }));
    return [
      {
        ...reading,
        temperature: withNotes(at, [{ key: 'lossRatio', args: { from: loss.value, to: then.value } }]),
        under: { ...reading.under, loads },
        state: reached ? ('labelLoad' as const) : ('worstSustained' as const),
        carriedFrom: {
          current: currentOf(reading) ?? 0,
          to: target.value,
          measured: known.length > 1 && exponent.step.kind !== 'constant',
        },
      },
    ];
  });
}

function atLoad(sweep: LevelFacts['nearest'][number]['sweep'], level: LevelFacts, reading: SpotReading, id: string): AtLoad | null {
  const { temperature, ambient, under, state, missing, place } = reading;
  const amperes = currentOf(reading);
  if (temperature === null || ambient === null || temperature.side !== undefined || state !== 'tested' || place.outside === true)
    return null;
  if (missing.length > 0 || amperes === null || under.loads?.some(({ port }) => port !== level.port.id) === true) return null;
  const minutes = parseQuantity(findCondition(under.minutes) ?? '', 'time');
  if (reading.settled !== true && (isRefusal(minutes) || minutes.value < SETTLED_S)) return null;
  const current = given('typed', amperes, 'A', { id: `${id}/current`, name: 'outputCurrent', symbol: 'I', field: reading.field });
  const own = lossAt(sweep, current, id);
  return own === null || own.value <= 0 || temperature.value <= ambient.value ? null : { reading, temperature, ambient, loss: own };
}

function currentOf({ under }: SpotReading): number | null {
  const [only, ...more] = under.loads ?? [];
  if (only === undefined || more.length > 0 || typeof only.draws !== 'string') return null;
  const read = parseQuantity(only.draws, 'current');
  return isRefusal(read) ? null : read.value;
}

/** From two loads of the part itself where they are far enough apart, else the usual one with its wider doubt. */
function exponentOf(place: string, known: readonly AtLoad[]): Derived {
  const [first, second] = [known[0], known.at(-1)];
  if (first !== undefined && second !== undefined && second.loss.value >= APART * first.loss.value)
    return derive(
      exponentOfLoss,
      {
        first: first.temperature,
        firstAmbient: first.ambient,
        second: second.temperature,
        secondAmbient: second.ambient,
        smaller: first.loss,
        greater: second.loss,
      },
      `heat/${place}/exponent`,
    );
  return given(
    'constant',
    EXPONENT,
    '1',
    {
      id: 'heat/exponent-of-loss',
      name: 'estimate-exponent-of-loss',
      symbol: 'k',
      source: cite('heat-theory', 'exponent 1 by conduction, about 0.8 by free convection', 'memory'),
    },
    { form: doubtOf({ id: 'estimate/exponent-of-loss', u: rectangular(EXPONENT_HALF), means: 'estimate' }) },
  );
}
