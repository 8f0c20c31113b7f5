import type { SpotReading } from './spot-facts.ts';

/** The exhibit that a reading stands in. */
const exhibitOf = (reading: SpotReading): string => reading.field.split('/')[2] ?? '';

/**
 * What heats a part that loses little itself: the hottest place read together with it, in the same exhibit and so under the same load and cover.
 * Null where nothing hotter was read.
 */
export function hottestNeighbour(
  reading: SpotReading,
  spots: readonly SpotReading[],
): { readonly place: string; readonly kelvin: number } | null {
  const own = reading.temperature;
  if (own === null) return null;
  let found: { place: string; kelvin: number } | null = null;
  for (const other of spots) {
    if (other.place.id === reading.place.id || exhibitOf(other) !== exhibitOf(reading) || other.temperature === null) continue;
    const kelvin = other.temperature.value - own.value;
    if (kelvin > (found?.kelvin ?? 0)) found = { place: other.place.name, kelvin: Math.round(kelvin) };
  }
  return found;
}
