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
      /** resistance: of a winding, read off its resistance cold and hot, which stand in `resistance`, or as a temperature worked out by hand. */
      by: z.enum(['contact', 'infrared', 'resistance']),
      /** Of a copper winding: its resistance cold, at which temperature, and hot; the value then stays unread. */
      resistance: z
        .strictObject({
          cold: value(quantity('resistance')),
          coldAt: value(quantity('temperature')),
          hot: value(quantity('resistance')),
        })
        .optional(),
      cameraEmissivity: quantity('ratio').optional(),
      reflected: value(quantity('temperature')).optional(),
    }),
  ),
});
