import { parseQuantity, type Quantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Bench } from '../bench/bench.ts';
import { conditionsOf, findCondition } from '../bench/conditions-of.ts';
import { type EventReading, eventsOf, readingsOf } from './event-facts.ts';
import { isDrawing } from './other-loads.ts';

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
