import { z } from 'zod';
import { conditions } from './conditions.ts';
import { role } from './instrument.ts';
import { id, words } from './typed.ts';
import { noValue } from './value.ts';

/**
 * Rows typed by hand (`rows`, cells in the order of `columns`), or columns of an attached file (`file`; then each column says which of the
 * file's columns it is, by name or by number counted from 1). Cells keep their digits as typed.
 */
export const table = z.strictObject({
  columns: z.array(
    z.strictObject({
      id,
      /** Unit of the cells, "mA"; a file that states its own unit must agree. */
      unit: words.optional(),
      /** The place, port or conductor that the column is about. */
      of: id.optional(),
      role: role.optional(),
      /** Column of the file: its name, or its number counted from 1. */
      from: z.union([words, z.number().int().positive()]).optional(),
    }),
  ),
  rows: z
    .array(z.strictObject({ id, cells: z.array(z.union([z.string(), noValue])), under: conditions.optional(), struck: words.optional() }))
    .optional(),
  file: id.optional(),
});
export type Table = z.infer<typeof table>;
