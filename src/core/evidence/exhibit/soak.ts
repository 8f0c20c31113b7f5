import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { table } from '../table.ts';

/** Temperatures logged over time. */
export const soak = z.strictObject({ ...base, kind: z.literal('soak'), table });
