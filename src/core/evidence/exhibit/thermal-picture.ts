import { z } from 'zod';
import { base, region } from '../exhibit-base.ts';
import { id, words } from '../typed.ts';

/** A matrix of temperatures, with regions drawn on it. */
export const thermalPicture = z.strictObject({
  ...base,
  kind: z.literal('thermalPicture'),
  file: id,
  scale: z.strictObject({ unit: words, factor: z.number().optional() }),
  regions: z.array(region),
  photo: id.optional(),
});
