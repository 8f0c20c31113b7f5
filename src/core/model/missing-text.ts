import { type Refusal, refuse } from '../quantity/refusal.ts';
import type { Missing } from './assumed.ts';
import type { NoModel } from './model.ts';

const NEEDS: Readonly<Record<Missing['key'], (part: string) => string>> = {
  value: (part) => `the value of ${part}`,
  inductance: (part) => `the primary inductance of ${part}`,
  turns: (part) => `the turns of winding ${part}`,
  law: (part) => `the law by which ${part} works: fixedFrequency, valleySwitched or primaryCurrent`,
  frequency: (part) => `the switching frequency of ${part}`,
  currentLimit: (part) => `the current limit of ${part}`,
  net: (part) => `the net of ${part}`,
  inlet: () => 'a connector with pins L and N',
  outlet: () => 'a connector with pins + and -',
  kind: (part) => `the kind of ${part}`,
  kneeVoltage: (part) => `the knee voltage of ${part}`,
  claim: (part) => `the promised current of ${part}`,
};

/** What a circuit lacks before it can be run, one refusal each. */
export function toRefusals({ because, missing }: NoModel): Refusal[] {
  if (because === 'noCircuit') return [refuse('no-circuit', 'no traced circuit', 'parts with pins that share nets', { place: '/parts' })];
  if (because === 'notAFlyback')
    return [
      refuse('not-a-flyback', 'a circuit of another kind', 'a converter that stores energy in its transformer, recognised as such', {
        place: '/parts',
      }),
    ];
  return missing.map(({ key, part }) =>
    refuse('circuit-not-complete', 'a circuit that cannot be run yet', NEEDS[key](part), { place: '/parts' }),
  );
}
