import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, words } from '../typed.ts';
import { value } from '../value.ts';

/** What stands on the board as a whole: the first protective part, the rectifier, inrush limiting, bleeders, suppression, workmanship. */
export const board = z.strictObject({
  ...base,
  kind: z.literal('board'),
  fuse: value(z.enum(['cartridge', 'wire', 'fusibleResistor', 'track', 'plainResistor'])).optional(),
  fusePart: id.optional(),
  rectifier: value(z.enum(['bridge', 'singleDiode', 'doubler'])).optional(),
  inrush: value(id).optional(),
  bleeders: value(z.array(id)).optional(),
  suppression: value(z.array(id)).optional(),
  faults: z.array(z.strictObject({ id, what: words, at: id.optional(), photo: id })).optional(),
});
