import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { ZERO_CELSIUS_K } from '../../quantity/unit.ts';
import { cite } from '../../source/source.ts';
import { combine } from '../../trace/combine.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { deriveTyped } from '../bench/derive-reading.ts';
import { findRead } from '../bench/open-value.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';

export interface StopLimit {
  /** Key for the words: what is watched. */
  readonly of: 'outputCurrent' | 'outputVoltageUp' | 'outputVoltageDown' | 'caseTemperature';
  readonly about: string;
  readonly at: Derived;
}

/** Shares at which a test is stopped; common practice, no source. */
const OVER_CLAIM = 1.3;
const OVER_ADVERTISED = 1.5;
const OVER_NOMINAL = 1.2;
const UNDER_NOMINAL = 0.5;
const OF_CAPACITOR = 0.9;
const OF_RECTIFIER = 1;
const HOTTEST_CASE_C = 95;

/** Stop limits for tests of the output, worked out for this unit: the least of what each of its figures allows. */
export function stopLimitsFor(bench: Bench, levels: readonly LevelFacts[]): StopLimit[] {
  return levels.flatMap((level) => {
    const currents = [
      ...claimed(level),
      ...advertised(bench, level),
      ...rated(bench, 'current', OF_RECTIFIER, new Set(['diode']), `${level.id}`),
    ];
    const ups = [
      ...nominal(level, OVER_NOMINAL),
      ...rated(bench, 'voltage', OF_CAPACITOR, new Set(['electrolyticCapacitor']), `${level.id}`),
    ];
    const stops: StopLimit[] = [];
    const least = (list: readonly Derived[]): Derived | undefined => list.toSorted((a, b) => a.value - b.value)[0];
    const current = least(currents);
    const up = least(ups);
    const [down] = nominal(level, UNDER_NOMINAL);
    if (current !== undefined) stops.push({ of: 'outputCurrent', about: level.about, at: current });
    if (up !== undefined) stops.push({ of: 'outputVoltageUp', about: level.about, at: up });
    if (down !== undefined) stops.push({ of: 'outputVoltageDown', about: level.about, at: down });
    return stops;
  });
}

/** The outside temperature at which a soak is stopped, whatever the unit. */
export function hottestCase(): StopLimit {
  const at = given('constant', HOTTEST_CASE_C + ZERO_CELSIUS_K, 'K', {
    id: 'stop/case-temperature',
    name: 'stop-case-temperature',
    symbol: 'T_s',
    source: cite('bench', 'a case that heads for more than 95 °C is not left to get there', 'common-practice'),
  });
  return { of: 'caseTemperature', about: 'case', at };
}

/** A share of what is claimed, advertised or rated. */
function stopAt(factor: number, figure: Derived, id: string): Derived {
  const source = cite('bench', 'stop limits that careful people write into the load, the source and the camera', 'common-practice');
  const share = given('constant', factor, '1', { id: `stop/share-${factor}`, name: 'stop-share', symbol: 'k', source });
  return combine(
    {
      kind: 'reduce',
      unit: figure.unit,
      formula: null,
      symbols: { share: 'k', figure: figure.step.symbol ?? 'X' },
      moves: { share: 'up', figure: 'up' },
      compute: (plain) => plain.share * plain.figure,
    },
    { share, figure },
    { id, name: 'stopAt', symbol: 'X_s', source },
  );
}

function claimed({ id, claim }: LevelFacts): Derived[] {
  return claim === null || claim.value <= 0 ? [] : [stopAt(OVER_CLAIM, claim, `stop/${id}/by-claim`)];
}

function advertised(bench: Bench, { id, port, window }: LevelFacts): Derived[] {
  return exhibitsOf(bench, 'advertised')
    .filter((exhibit) => exhibit.port === port.id && exhibit.struck === undefined)
    .flatMap((exhibit) =>
      exhibit.offers.flatMap((offer) => {
        const volts = offer.voltage === undefined ? null : parseQuantity(offer.voltage, 'voltage');
        if (volts === null || isRefusal(volts) || window === null || volts.value !== window.nominal.value) return [];
        const figure = deriveTyped(
          offer.current,
          'current',
          `/exhibits/${exhibit.id}/offers/${offer.id}/current`,
          'advertisedCurrent',
          'X',
        );
        return [stopAt(OVER_ADVERTISED, figure, `stop/${id}/by-offer-${offer.id}`)];
      }),
    );
}

function nominal({ id, window }: LevelFacts, factor: number): Derived[] {
  return window === null ? [] : [stopAt(factor, window.nominal, `stop/${id}/by-nominal-${factor}`)];
}

/** Ratings of parts that stand with both feet on the output side. */
function rated(bench: Bench, what: 'current' | 'voltage', factor: number, kinds: ReadonlySet<string>, id: string): Derived[] {
  return bench.one.parts.flatMap((part) => {
    const rating = findRead(part.rating?.[what]);
    const sides = (part.pins ?? []).map(({ net }) => findRead(bench.conductors.get(findRead(net) ?? '')?.side));
    if (rating === null || !kinds.has(findRead(part.kind) ?? '') || sides.length === 0 || sides.some((side) => side !== 'output'))
      return [];
    const figure = deriveTyped(rating, what, `/parts/${part.id}/rating/${what}`, what === 'current' ? 'ratedCurrent' : 'ratedVoltage', 'X');
    return [stopAt(factor, figure, `stop/${id}/by-${part.id}`)];
  });
}
