import { z } from 'zod';
import { id, words } from '../typed.ts';

/** What results of a run circuit share: which circuit, at which level, on which assumptions. */
export const runLevel = z.strictObject({ port: id, id, name: words, volts: z.number(), amps: z.number() });
export const runMains = z.strictObject({ rmsV: z.number(), hertz: z.number() });

/** A figure that nobody read: key of its words, the part, SI value, and where it comes from. */
export const runAssumption = z.strictObject({
  key: words,
  part: words.nullable(),
  value: z.number().nullable(),
  unit: z.string(),
  publication: words,
  place: words,
  grade: words,
});

/** Something that happened in a run: a rating exceeded, a breakdown, a fuse that opened, a core that saturated. */
export const runFinding = z.strictObject({
  code: z.enum(['ratingExceeded', 'breakdown', 'fuseOpened', 'saturated']),
  ref: words,
  atS: z.number(),
  value: z.number().nullable(),
  limit: z.number().nullable(),
});
export type RunFindingKept = z.infer<typeof runFinding>;

/** Lines to be drawn: one list of times for all. */
export const runWaveform = z.strictObject({
  timeS: z.array(z.number()),
  lines: z.array(z.strictObject({ id: words, unit: z.enum(['V', 'A']), values: z.array(z.number()) })),
});
export type RunWaveform = z.infer<typeof runWaveform>;

export const outcome = z.enum(['completed', 'cancelled', 'budgetSpent', 'noConsistentState', 'ratingExceeded']);
