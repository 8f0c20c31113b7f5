import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity, words } from '../typed.ts';
import { value } from '../value.ts';

/** Waveforms of an oscilloscope, with what was probed. */
export const capture = z.strictObject({
  ...base,
  kind: z.literal('capture'),
  file: id,
  channels: z.array(
    z.strictObject({
      column: z.union([words, z.number().int().positive()]),
      node: id,
      attenuation: value(quantity('ratio')),
      bandwidth: value(quantity('frequency')).optional(),
      coupling: value(z.enum(['dc', 'ac'])).optional(),
    }),
  ),
});
