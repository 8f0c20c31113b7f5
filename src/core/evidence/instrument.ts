import { z } from 'zod';
import { parseAccuracy } from '../quantity/accuracy.ts';
import { parseQuantity } from '../quantity/parse-quantity.ts';
import { isRefusal, sentence } from '../quantity/refusal.ts';
import type { Kind } from '../quantity/unit.ts';
import { date, id, quantity, words } from './typed.ts';

/** What a channel of an instrument is used for on a day. */
export const ROLES = {
  mains: 'voltage',
  inputPower: 'power',
  outputVoltage: 'voltage',
  outputCurrent: 'current',
  temperature: 'temperature',
  ambient: 'temperature',
  distance: 'length',
  mass: 'mass',
  resistance: 'resistance',
  insulation: 'resistance',
  capacitance: 'capacitance',
  inductance: 'inductance',
  testVoltage: 'voltage',
  touchCurrent: 'current',
  residualVoltage: 'voltage',
  ripple: 'voltage',
  scope: 'voltage',
  frequency: 'frequency',
} as const satisfies Record<string, Kind>;
export type Role = keyof typeof ROLES;
export const role = z.enum(Object.keys(ROLES) as [Role, ...Role[]]);

const instrumentRange = z
  .strictObject({
    of: role,
    upTo: z.string().optional(),
    resolution: z.string().optional(),
    accuracy: z.string(),
    /** How the accuracy is meant: the maker's stated limits (rectangular), a standard uncertainty, or an expanded one with k = 2. */
    basis: z.enum(['statedLimit', 'standard', 'expanded2']).optional(),
  })
  .superRefine((one, context) => {
    const kind = ROLES[one.of];
    const accuracy = parseAccuracy(one.accuracy, kind);
    if (isRefusal(accuracy))
      context.addIssue({ code: 'custom', path: ['accuracy'], message: sentence(accuracy), params: { refusal: accuracy } });
    for (const key of ['upTo', 'resolution'] as const) {
      const text = one[key];
      if (text === undefined) continue;
      const step = key === 'resolution' && kind === 'temperature' ? 'temperatureDifference' : kind;
      const quantityRead = parseQuantity(text, step);
      if (isRefusal(quantityRead))
        context.addIssue({ code: 'custom', path: [key], message: sentence(quantityRead), params: { refusal: quantityRead } });
    }
  });

export const instrument = z.strictObject({
  id,
  name: words,
  calibrated: date.optional(),
  inputResistance: quantity('resistance').optional(),
  inputCapacitance: quantity('capacitance').optional(),
  /** The span in which it works at all; below `from` a meter that lives on what it measures goes dark. */
  works: z.strictObject({ of: role, from: z.string().optional(), to: z.string().optional() }).optional(),
  ranges: z.array(instrumentRange),
});
export type Instrument = z.infer<typeof instrument>;
export type InstrumentRange = Instrument['ranges'][number];
