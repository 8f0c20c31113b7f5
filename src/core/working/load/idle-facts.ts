import { parseQuantity, type Quantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { combine } from '../../trace/combine.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { conditionsOf, findCondition } from '../bench/conditions-of.ts';
import { type EventReading, eventsOf, readingsOf } from './event-facts.ts';
import { isDrawing } from './other-loads.ts';
import { nameplateOf } from './power-facts.ts';
import type { LevelFacts } from './sweep-facts.ts';

export interface IdleReading extends EventReading {
  readonly mains: Quantity | null;
  /** The event itself says that something was connected. */
  readonly loaded: boolean;
}

/** Input power with nothing connected. */
export function idlePowers(bench: Bench): IdleReading[] {
  return idleReadings(bench, ['inputPower']);
}

/** What was read with nothing connected. */
export function idleReadings(bench: Bench, names: readonly EventReading['name'][]): IdleReading[] {
  return eventsOf(bench, ['idle']).flatMap((event) => {
    const text = findCondition(conditionsOf(bench, event).mains);
    const mains = text === null ? null : parseQuantity(text, 'voltage');
    const loaded = (event.under?.loads ?? []).some(isDrawing);
    return readingsOf(bench, event, names).map((reading) => ({
      ...reading,
      mains: mains === null || isRefusal(mains) ? null : mains,
      loaded,
    }));
  });
}

/** Nameplate output power of the whole unit: of each port its largest level, summed over the ports. Null when a port has none. */
export function unitNameplate(levels: readonly LevelFacts[]): Derived | null {
  const ports = [...new Set(levels.map(({ port }) => port.id))];
  const largest = ports.map((port) => {
    const own = levels.filter((level) => level.port.id === port).flatMap((level) => nameplateOf(level) ?? []);
    return own.toSorted((a, b) => b.value - a.value)[0] ?? null;
  });
  const known = largest.filter((one) => one !== null);
  if (known.length === 0 || known.length < largest.length) return null;
  if (known.length === 1) return known[0]!;
  const named = Object.fromEntries(known.map((one, index) => [`p${index + 1}`, one]));
  return combine(
    {
      kind: 'reduce',
      unit: 'W',
      formula: null,
      symbols: Object.fromEntries(Object.keys(named).map((key, index) => [key, `P_${index + 1}`])),
      moves: Object.fromEntries(Object.keys(named).map((key) => [key, 'up' as const])),
      compute: (plain) => Object.values(plain).reduce((sum, one) => sum + one, 0),
    },
    named,
    { id: 'load/nameplate-sum', name: 'nameplateSum', symbol: 'P' },
  );
}
