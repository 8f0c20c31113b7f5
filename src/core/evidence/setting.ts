import { z } from 'zod';
import { id, quantity } from './typed.ts';

/** What the judgement assumes. Every key but `market` has a cited default; a changed key is shown beside the verdict. */
export const setting = z.strictObject({
  market: z.enum(['EU', 'UK', 'US', 'JP', 'other']),
  mains: z
    .strictObject({
      nominal: quantity('voltage'),
      low: quantity('voltage'),
      high: quantity('voltage'),
      frequency: quantity('frequency'),
      highFrequency: quantity('frequency').optional(),
    })
    .optional(),
  highestAmbient: quantity('temperature').optional(),
  altitude: quantity('length').optional(),
  overvoltageCategory: z.union([z.literal(1), z.literal(2), z.literal(3), z.literal(4)]).optional(),
  pollutionDegree: z.union([z.literal(1), z.literal(2), z.literal(3)]).optional(),
  productStandards: z.array(id).optional(),
  editions: z.record(id, z.string()).optional(),
  contact: z.enum(['under1s', '1to10s', '10to60s', 'over1min']).optional(),
  decision: z.strictObject({ passAt: z.number().gt(0.5).lt(1), failAt: z.number().gt(0).lt(0.5) }).optional(),
});
