import { z } from 'zod';
import { conditions } from './conditions.ts';
import { SURFACES } from './sample.ts';
import { id, localTime, quantity, words } from './typed.ts';
import { value } from './value.ts';

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

const pixel = z.tuple([z.number(), z.number()]);

/**
 * Pixels of the named file, from 0 at the top left; `points` are the corners of the outline and alone decide what lies inside. `drawn` keeps
 * that a rectangle or an ellipse was meant, so that it can be drawn on as one.
 */
export const region = z.strictObject({
  id,
  place: id,
  points: z.array(pixel),
  drawn: z.enum(['rectangle', 'ellipse', 'polygon']).optional(),
  /** What counts of the pixels inside; without it the hottest. */
  takes: z.enum(['hottest', 'mean']).optional(),
  /** What the camera looked at here (tape, paint), where it is not the surface of the place; its emissivity is looked up where none is stated. */
  surface: value(z.enum(SURFACES)).optional(),
  emissivity: value(quantity('ratio')).optional(),
  reflected: value(quantity('temperature')).optional(),
});

/** One point seen in the picture and found on the photo beside it, in pixels of each. */
export const samePoint = z.strictObject({ id, picture: pixel, photo: pixel });
