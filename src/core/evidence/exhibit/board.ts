import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity, words } from '../typed.ts';
import { value } from '../value.ts';

/** What stands on the board as a whole: the first protective part, the rectifier, inrush limiting, bleeders, suppression, workmanship. */
export const board = z.strictObject({
  ...base,
  kind: z.literal('board'),
  fuse: value(z.enum(['cartridge', 'wire', 'fusibleResistor', 'track', 'plainResistor'])).optional(),
  fusePart: id.optional(),
  /** The track that is the first part: a copper thickness left out is taken as 35 µm. */
  track: value(z.strictObject({ width: quantity('length'), thickness: quantity('length').optional() })).optional(),
  /** The capacitors behind the rectifier; absent where there are none. Without it they are found by their pins. */
  bulk: value(z.array(id)).optional(),
  rectifier: value(z.enum(['bridge', 'singleDiode', 'doubler'])).optional(),
  inrush: value(id).optional(),
  bleeders: value(z.array(id)).optional(),
  suppression: value(z.array(id)).optional(),
  /** Every mains wire is held by something other than its solder joint. */
  wiresHeld: value(z.boolean()).optional(),
  /** An empty list says that somebody looked and found none. */
  faults: z
    .array(
      z.strictObject({
        id,
        what: words,
        kind: z.enum(['mainsJoint', 'looseConductor', 'otherJoint', 'residue', 'solderBall', 'unfixedPart', 'other']).optional(),
        at: id.optional(),
        photo: id,
      }),
    )
    .optional(),
});
