import { z } from 'zod';
import { id, quantity, words } from './typed.ts';

/** A condition's value: a reading as typed, or the state "unknown" with its reason. Conditions have no conditions of their own. */
function condition<T extends z.ZodType>(inner: T) {
  return z.union([inner, z.strictObject({ state: z.literal('unknown'), because: words })]);
}

/** Direct: the public network with its earthed neutral. Isolating: behind an isolating transformer. Electronic: a source with a floating output. */
export const supply = z.enum(['direct', 'isolating', 'electronic']);
export type Supply = z.infer<typeof supply>;

export const load = z.strictObject({
  port: id,
  level: id.optional(),
  draws: z.union([quantity('current'), z.strictObject({ state: z.enum(['open', 'short', 'unknown']) })]),
});

/**
 * Under which conditions something was read. Nearest wins: reading, row, exhibit, day; `loads` is replaced whole. Cover and orientation
 * never pass an event of no return; touch readings take supply and orientation from the reading or its exhibit only.
 */
export const conditions = z.strictObject({
  mains: condition(quantity('voltage', 'unsigned')).optional(),
  frequency: condition(quantity('frequency')).optional(),
  supply: condition(supply).optional(),
  orientation: condition(z.enum(['A', 'B'])).optional(),
  ambient: condition(quantity('temperature')).optional(),
  position: words.optional(),
  cover: z
    .union([
      z.enum(['closed', 'open']),
      z.strictObject({ openedBefore: quantity('time') }),
      z.strictObject({ state: z.literal('unknown'), because: words }),
    ])
    .optional(),
  loads: z.array(load).optional(),
  start: condition(z.enum(['cold', 'hot'])).optional(),
  minutes: condition(quantity('time')).optional(),
});
export type Conditions = z.infer<typeof conditions>;
