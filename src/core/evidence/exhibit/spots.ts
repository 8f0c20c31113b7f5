import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity } from '../typed.ts';
import { value } from '../value.ts';

/** Temperatures at named places under one set of conditions. */
export const spots = z.strictObject({
  ...base,
  kind: z.literal('spots'),
  rows: z.array(
    z.strictObject({
      id,
      place: id,
      value: value(quantity('temperature')),
      /** resistance: of a winding, worked out from its resistance cold and hot. */
      by: z.enum(['contact', 'infrared', 'resistance']),
      cameraEmissivity: quantity('ratio').optional(),
      reflected: value(quantity('temperature')).optional(),
    }),
  ),
});
