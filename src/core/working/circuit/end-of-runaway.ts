import { derive } from '../../formula/derive.ts';
import { outputAtTrip } from '../../formula/feedback/output-at-trip.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import type { CircuitFacts } from './circuit-facts.ts';
import { dropOf } from './drops.ts';
import { turnsOf } from './turns-of.ts';

/** Key of a controller's law that holds the supply voltage at which it stops for overvoltage. */
const TRIP_KEY = 'overvoltageTrip';

/** Output at which the controller's own trip ends a runaway; null where trip or turns are not known. */
export function endOfRunaway(bench: Bench, { recognised }: CircuitFacts): Derived | null {
  const { regulation, converter } = recognised;
  const controller = regulation?.controller ?? null;
  const [secondary] = converter?.secondaries ?? [];
  const [auxiliary] = converter?.auxiliaries ?? [];
  if (controller === null || secondary === undefined || auxiliary === undefined) return null;
  const law = findRead<Record<string, unknown>>(bench.parts.get(controller.id)?.law as never);
  const text = law?.[TRIP_KEY];
  const read = typeof text === 'string' ? parseQuantity(text, 'voltage') : null;
  if (read === null || isRefusal(read) || read.side !== undefined) return null;
  const [ns, na] = [turnsOf(bench, secondary.winding, 'N_s'), turnsOf(bench, auxiliary.winding, 'N_a')];
  if ('opened' in ns || 'opened' in na) return null;
  const field = `/parts/${controller.id}/law/${TRIP_KEY}`;
  const trip = given('typed', read.value, 'V', { id: field, name: 'overvoltageTrip', field, symbol: 'V_t' });
  return derive(
    outputAtTrip,
    { trip, auxiliaryDrop: dropOf('signalDiode'), secondary: ns, auxiliary: na, outputDrop: dropOf('schottky') },
    'circuit/output-at-trip',
  );
}
