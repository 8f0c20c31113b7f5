import { z } from 'zod';
import { base, tries } from '../exhibit-base.ts';
import { id, words } from '../typed.ts';
import { value } from '../value.ts';

/** Something done so many times: started, shorted, stepped, left idle. */
export const event = z.strictObject({
  ...base,
  kind: z.literal('event'),
  port: id.optional(),
  level: id.optional(),
  what: z.enum(['start', 'brownOut', 'plugIn', 'unplug', 'negotiation', 'step', 'short', 'overload', 'idle']),
  tries,
  /**
   * After a short or an overload: it comes back by itself, stays off until the mains is taken away, is dead, smoked, burnt with a flame for more
   * than 10 s or outside the case, or a live part can be touched.
   */
  aftermath: value(z.enum(['recovers', 'staysOff', 'dead', 'smoke', 'flame', 'livePart'])).optional(),
  readings: z.array(
    z.strictObject({ id, name: z.enum(['peak', 'trough', 'settled', 'seconds', 'inputPower', 'current']), value: value(words) }),
  ),
});
