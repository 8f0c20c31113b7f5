import type { StopView } from '../../present/workspace/next-view.ts';

/** What was just entered, in SI, by what it is. */
export type Entered = Readonly<Partial<Record<'outputVoltage' | 'outputCurrent' | 'temperature' | 'inputPower', number>>>;

/** Which entered quantity a stop limit watches, and on which side it stops. */
const WATCHED: Readonly<Record<string, { readonly entered: keyof Entered; readonly stops: 'above' | 'below' }>> = {
  outputCurrent: { entered: 'outputCurrent', stops: 'above' },
  outputVoltageUp: { entered: 'outputVoltage', stops: 'above' },
  outputVoltageDown: { entered: 'outputVoltage', stops: 'below' },
  caseTemperature: { entered: 'temperature', stops: 'above' },
  inputPower: { entered: 'inputPower', stops: 'above' },
};

/** Stop limits of the output that is tested and of the unit as a whole, each once. `level` is "port~level", null for every output. */
export function stopsOf(next: readonly { readonly stops: readonly StopView[] }[], level: string | null): StopView[] {
  const byWords = new Map<string, StopView>();
  for (const { stops } of next)
    for (const stop of stops) {
      const own = /^stop\/([^/]+~[^/]+)\//.exec(stop.step ?? '')?.[1];
      if (own === undefined || level === null || own === level) byWords.set(stop.words, stop);
    }
  return [...byWords.values()];
}

/** The entered value that a stop limit watches; undefined when nothing of it was entered. */
export function watchedValue(stop: StopView, entered: Entered): number | undefined {
  const watched = WATCHED[stop.of];
  return watched === undefined ? undefined : entered[watched.entered];
}

export function isCrossed(stop: StopView, entered: Entered): boolean {
  const value = watchedValue(stop, entered);
  if (value === undefined) return false;
  return WATCHED[stop.of]?.stops === 'below' ? value < stop.value : value > stop.value;
}

/** Where the value stands on the line, 0 at the bad end, 1 at the good one, the limit in the middle: two octaves each side. */
export function placeOnLine(stop: StopView, value: number): number {
  const KELVIN = 273.15;
  const ROOM = 25; // a rise over a usual room: a ratio of temperatures on the Celsius scale says nothing
  const OCTAVES = 2;
  const shown = stop.of === 'caseTemperature' ? [value - KELVIN - ROOM, stop.value - KELVIN - ROOM] : [value, stop.value];
  const [now = 0, limit = 1] = shown;
  if (now <= 0 || limit <= 0) return WATCHED[stop.of]?.stops === 'below' ? 0 : 1;
  const better = WATCHED[stop.of]?.stops === 'below' ? now / limit : limit / now;
  return Math.min(1, Math.max(0, 0.5 + Math.log2(better) / (2 * OCTAVES)));
}
