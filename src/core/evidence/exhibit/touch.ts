import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity } from '../typed.ts';
import { value } from '../value.ts';

const method = value(z.enum(['network', 'resistor', 'meter', 'probe']));

/**
 * Under power, from a touchable conductor to earth, or the pins after unplugging. `network` is the weighted network of IEC 60990 figure 4,
 * `resistor` a plain 2 kΩ, `meter` a meter's own input. Supply kind and plug orientation count only when stated here or on the reading.
 */
export const touch = z.discriminatedUnion('quantity', [
  z.strictObject({
    ...base,
    kind: z.literal('touch'),
    quantity: z.literal('touchCurrentRms'),
    from: id,
    method,
    value: value(quantity('current', 'unsigned')),
  }),
  z.strictObject({
    ...base,
    kind: z.literal('touch'),
    quantity: z.literal('touchCurrentPeak'),
    from: id,
    method,
    value: value(quantity('current', 'unsigned')),
  }),
  z.strictObject({
    ...base,
    kind: z.literal('touch'),
    quantity: z.literal('voltageToEarth'),
    from: id,
    method,
    value: value(quantity('voltage')),
  }),
  z.strictObject({
    ...base,
    kind: z.literal('touch'),
    quantity: z.literal('pinsAfterUnplugging'),
    from: id,
    method,
    value: value(quantity('voltage')),
    after: quantity('time'),
    /** Voltage on the pins at the moment of unplugging, off the same capture: without it the start is somewhere between zero and the crest. */
    start: value(quantity('voltage')).optional(),
    /** Unpluggings made, of which the value is the greatest; one when not stated. */
    tries: z.number().int().positive().optional(),
  }),
]);
