import { z } from 'zod';
import { base, region } from '../exhibit-base.ts';
import { id, quantity, words } from '../typed.ts';

const point = z.tuple([z.number(), z.number()]);

/** A photograph, perhaps with a scale laid on it. */
export const photo = z.strictObject({
  ...base,
  kind: z.literal('photo'),
  file: id,
  of: words,
  scale: z.strictObject({ points: z.tuple([point, point]), length: quantity('length') }).optional(),
  regions: z.array(region).optional(),
});
