import { derive } from '../../formula/derive.ts';
import { outputAtTrip } from '../../formula/feedback/output-at-trip.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import type { CircuitFacts } from './circuit-facts.ts';
import { dropOf } from './drops.ts';
import { lawFigure } from './law-of.ts';
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
  const part = bench.parts.get(controller.id);
  const trip = part === undefined ? null : lawFigure(part, TRIP_KEY, 'voltage', 'V_t');
  if (trip === null) return null;
  const [ns, na] = [turnsOf(bench, secondary.winding, 'N_s'), turnsOf(bench, auxiliary.winding, 'N_a')];
  if ('opened' in ns || 'opened' in na) return null;
  return derive(
    outputAtTrip,
    { trip, auxiliaryDrop: dropOf('signalDiode'), secondary: ns, auxiliary: na, outputDrop: dropOf('schottky') },
    'circuit/output-at-trip',
  );
}
