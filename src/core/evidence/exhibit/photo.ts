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
  /** Laid on another photo of the same board by three or four points that both show: `here` in pixels of this one, `there` of the other. */
  onto: z
    .strictObject({
      photo: id,
      points: z
        .array(z.strictObject({ here: point, there: point }))
        .min(3)
        .max(4),
    })
    .optional(),
});
