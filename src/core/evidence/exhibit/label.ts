import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { date, id, range, words } from '../typed.ts';
import { value } from '../value.ts';

/** What is printed on the unit, and what the seller promises. */
export const label = z.strictObject({
  ...base,
  kind: z.literal('label'),
  input: z
    .strictObject({
      voltage: value(range('voltage')).optional(),
      frequency: value(words).optional(),
      current: value(range('current')).optional(),
    })
    .optional(),
  class: value(z.enum(['I', 'II', 'III'])).optional(),
  marks: z.array(z.strictObject({ id, mark: words, state: value(words) })).optional(),
  maker: value(words).optional(),
  claims: z
    .array(
      z.strictObject({
        id,
        text: words,
        of: words.optional(),
        value: words.optional(),
        from: z.enum(['label', 'listing', 'box']).optional(),
      }),
    )
    .optional(),
  bought: z.strictObject({ where: words, date: date, price: words.optional() }).optional(),
});
