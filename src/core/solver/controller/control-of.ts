import type { Controller } from '../circuit.ts';
import type { ControlUnit } from './control-unit.ts';
import { FeedbackController } from './feedback-controller.ts';
import { FixedClock } from './fixed-clock.ts';
import { PrimarySideController } from './primary-side-controller.ts';
import { ValleyClock } from './valley-clock.ts';

/** The machine for a controller's law. */
export function controlOf(part: Controller, node: (net: string) => number): ControlUnit {
  const { law } = part;
  if (law.type === 'primarySide') return new PrimarySideController(part, law, node);
  return new FeedbackController(part, law, node, law.type === 'valley' ? new ValleyClock(law) : new FixedClock(law.hertz));
}
