import type { Part } from '../../evidence/sample.ts';
import type { Bench } from '../bench/bench.ts';
import type { SpotReading } from './spot-facts.ts';

/** A place whose part is known, with every temperature read there. */
export interface ComponentSpots {
  readonly id: string;
  readonly about: string;
  readonly part: Part;
  readonly readings: readonly SpotReading[];
}

/** The places on parts that the question is about. */
export function componentSpots(bench: Bench, spots: readonly SpotReading[], isMeant: (part: Part) => boolean): ComponentSpots[] {
  const places = new Map<string, { part: Part; readings: SpotReading[] }>();
  for (const spot of spots) {
    const part = spot.place.part === undefined ? undefined : bench.parts.get(spot.place.part);
    if (part === undefined || !isMeant(part)) continue;
    const entry = places.get(spot.place.id) ?? { part, readings: [] };
    entry.readings.push(spot);
    places.set(spot.place.id, entry);
  }
  return [...places].map(([id, { part, readings }]) => ({ id, about: readings[0]?.place.name ?? id, part, readings }));
}
