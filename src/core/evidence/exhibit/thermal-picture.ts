import { z } from 'zod';
import { base, region, samePoint } from '../exhibit-base.ts';
import { id, quantity, words } from '../typed.ts';
import { value } from '../value.ts';

/** A matrix of temperatures, with regions drawn on it. */
export const thermalPicture = z.strictObject({
  ...base,
  kind: z.literal('thermalPicture'),
  file: id,
  /** A number of the file is a temperature in `unit` after × factor + offset. */
  scale: z.strictObject({ unit: words, factor: z.number().optional(), offset: z.number().optional() }),
  regions: z.array(region),
  photo: id.optional(),
  /** Three or four points found on both, by which the photo is laid under the picture. */
  samePoints: z.array(samePoint).optional(),
  /** The camera: its accuracy is that of every number in the picture. */
  instrument: id.optional(),
  /** Emissivity that the camera was set to all over, and what its picture reflects; without the latter the ambient. */
  cameraEmissivity: quantity('ratio').optional(),
  reflected: value(quantity('temperature')).optional(),
});
