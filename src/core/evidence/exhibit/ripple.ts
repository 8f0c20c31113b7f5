import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity, words } from '../typed.ts';
import { value } from '../value.ts';

/** Peak-to-peak ripple at a port; nothing without its bandwidth and fixture. */
export const ripple = z.strictObject({
  ...base,
  kind: z.literal('ripple'),
  port: id,
  level: id.optional(),
  value: value(quantity('voltage')),
  bandwidth: value(quantity('frequency')),
  fixture: value(words),
});
