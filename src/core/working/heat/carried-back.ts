import { derive } from '../../formula/derive.ts';
import { atOpening } from '../../formula/thermal/at-opening.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Derived, given, uncertainty, withNotes } from '../../trace/derived.ts';
import type { SpotReading } from './spot-facts.ts';

interface AfterOpening {
  readonly reading: SpotReading;
  readonly temperature: Derived;
  readonly ambient: Derived;
  readonly after: Derived;
}

const CLEARLY = 2; // standard uncertainties by which a part must have cooled; less is noise carried back
const FARTHEST = 2; // times the first delay may be of the time between both readings; beyond it the carrying back doubles the doubt and more

/**
 * For every inside place that was read at least twice with the cover taken off so many seconds before: its temperature at the moment of opening.
 * It stays a bound from below: a lid that is off is off, and the first fall is the fastest.
 */
export function carriedBack(spots: readonly SpotReading[]): SpotReading[] {
  const byPlace = new Map<string, AfterOpening[]>();
  for (const reading of spots) {
    const one = toAfterOpening(reading);
    if (one !== null) byPlace.set(reading.place.id, [...(byPlace.get(reading.place.id) ?? []), one]);
  }
  return [...byPlace.values()].flatMap((readings) => {
    const [first, second] = readings.toSorted((a, b) => a.after.value - b.after.value);
    return first === undefined || second === undefined ? [] : (carry(first, second) ?? []);
  });
}

function toAfterOpening(reading: SpotReading): AfterOpening | null {
  const { temperature, ambient, under, place } = reading;
  const { cover } = under;
  if (place.outside === true || temperature === null || ambient === null || temperature.side !== undefined) return null;
  if (typeof cover !== 'object' || !('openedBefore' in cover)) return null;
  const quantity = parseQuantity(cover.openedBefore, 'time');
  if (isRefusal(quantity) || quantity.side !== undefined) return null;
  const field = `${reading.field}/openedBefore`;
  return {
    reading,
    temperature,
    ambient,
    after: given('typed', quantity.value, 's', { id: field, name: 'openedBefore', symbol: 't', field }),
  };
}

function carry(first: AfterOpening, second: AfterOpening): SpotReading | null {
  const between = second.after.value - first.after.value;
  const fell = first.temperature.value - second.temperature.value;
  const [u1, u2] = [uncertainty(first.temperature), uncertainty(second.temperature)];
  const noise = u1 === null || u2 === null ? 0 : CLEARLY * Math.sqrt(u1 * u1 + u2 * u2);
  if (between <= 0 || first.after.value > FARTHEST * between || fell <= noise || second.temperature.value <= first.ambient.value)
    return null;
  const at = derive(
    atOpening,
    {
      first: first.temperature,
      second: second.temperature,
      ambient: first.ambient,
      firstAfter: first.after,
      secondAfter: second.after,
    },
    `heat/${first.reading.place.id}/at-opening`,
  );
  return { ...first.reading, temperature: withNotes(at, [{ key: 'carriedBack', args: { seconds: first.after.value } }]) };
}
