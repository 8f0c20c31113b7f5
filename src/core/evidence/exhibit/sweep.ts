import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { table } from '../table.ts';
import { id, quantity, words } from '../typed.ts';
import { value } from '../value.ts';

/** Output voltage over output current, perhaps with input power: columns by role outputCurrent, outputVoltage, inputPower. */
export const sweep = z.strictObject({
  ...base,
  kind: z.literal('sweep'),
  port: id,
  level: id.optional(),
  order: z.enum(['up', 'down']),
  dwell: quantity('time').optional(),
  sense: z.enum(['socket', 'cableEnd']),
  table,
  ends: value(words).optional(),
  /** Beyond the last row: it keeps giving current, stops and tries again, or stays off until the mains or the load is taken away. */
  beyond: value(z.enum(['keepsGiving', 'triesAgain', 'staysOff'])).optional(),
  /** Lowest voltage read at another loaded port while this one drew up to what it holds. */
  others: z.array(z.strictObject({ id, port: id, voltage: value(quantity('voltage')) })).optional(),
});
