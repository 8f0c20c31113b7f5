import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity } from '../typed.ts';
import { value } from '../value.ts';

/**
 * Voltage left on a capacitor after unplugging, before anything was touched; and read once more later, because charge comes back. What a person
 * was exposed to, and no reading of the unit as it works.
 */
export const residual = z.strictObject({
  ...base,
  kind: z.literal('residual'),
  /** The part it was read across; left out where the board was not read yet. */
  across: id.optional(),
  value: value(quantity('voltage')),
  /** Since the plug left the socket. */
  after: quantity('time').optional(),
  later: z.strictObject({ value: value(quantity('voltage')), after: quantity('time').optional() }).optional(),
});
