import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity, words } from '../typed.ts';
import { value } from '../value.ts';

/** What a port offers to the device: pull-up, data lines, voltages and currents. */
export const advertised = z.strictObject({
  ...base,
  kind: z.literal('advertised'),
  port: id,
  by: words,
  offers: z.array(
    z.strictObject({ id, voltage: quantity('voltage').optional(), upTo: quantity('voltage').optional(), current: quantity('current') }),
  ),
  pullUp: value(quantity('resistance')).optional(),
  dataLines: value(words).optional(),
});
