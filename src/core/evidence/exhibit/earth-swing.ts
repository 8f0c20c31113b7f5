import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity } from '../typed.ts';
import { value } from '../value.ts';

/** Voltage with which an output swings against earth, peak to peak, its device not connected: what makes a touch screen go mad. */
export const earthSwing = z.strictObject({
  ...base,
  kind: z.literal('earthSwing'),
  port: id,
  level: id.optional(),
  value: value(quantity('voltage', 'unsigned')),
  /** How long its pulses last; short ones are let pass. */
  pulse: value(quantity('time')).optional(),
});
