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
  readings: z.array(z.strictObject({ id, name: z.enum(['peak', 'trough', 'settled', 'seconds', 'inputPower', 'current']), value: value(words) })),
});
