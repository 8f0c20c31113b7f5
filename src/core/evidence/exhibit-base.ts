import { z } from 'zod';
import { conditions } from './conditions.ts';
import { id, localTime, words } from './typed.ts';

/** What every exhibit carries beside its kind. `struck` takes it out of judgement but keeps it, with the reason. */
export const base = {
  id,
  day: id.optional(),
  at: localTime.optional(),
  under: conditions.optional(),
  files: z.array(id).optional(),
  note: words.optional(),
  struck: words.optional(),
};

export const tries = z.strictObject({
  made: z.number().int().nonnegative(),
  failed: z.number().int().nonnegative(),
  each: z.array(z.strictObject({ id, outcome: words, note: words.optional() })).optional(),
});

/** Pixels of the named file. */
export const region = z.strictObject({ id, place: id, points: z.array(z.tuple([z.number(), z.number()])) });
