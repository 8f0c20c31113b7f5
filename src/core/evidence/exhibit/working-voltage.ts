import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity } from '../typed.ts';
import { value } from '../value.ts';

/** Voltage between two conductors in use, mains neutral joined to the output minus. */
export const workingVoltage = z.strictObject({
  ...base,
  kind: z.literal('workingVoltage'),
  between: z.tuple([id, id]),
  rms: value(quantity('voltage', 'unsigned')).optional(),
  peak: value(quantity('voltage', 'unsigned')).optional(),
  frequency: value(quantity('frequency')).optional(),
});
