import { z } from 'zod';
import { base, tries } from '../exhibit-base.ts';
import { id, quantity, words } from '../typed.ts';
import { value } from '../value.ts';

/** Plug, mass, seam, drop, sounds and smells with their minute. */
export const body = z.strictObject({
  ...base,
  kind: z.literal('body'),
  plug: value(words),
  /** flatTwoPin: 2.5 A, EN 50075. cord: the unit does not sit in the socket. The others by their standard or where they are used. */
  plugSystem: value(z.enum(['flatTwoPin', 'bs1363', 'nema1', 'as3112', 'otherInBody', 'cord'])).optional(),
  mass: value(quantity('mass')).optional(),
  size: value(z.tuple([quantity('length'), quantity('length'), quantity('length')])).optional(),
  pin: z
    .strictObject({
      diameter: value(quantity('length')).optional(),
      length: value(quantity('length')).optional(),
      sleeved: value(z.boolean()).optional(),
      /** From a line or neutral pin to the nearest edge of the face that meets the socket. */
      toEdge: value(quantity('length')).optional(),
    })
    .optional(),
  /** In front of the face that meets the socket. */
  centreOfMass: value(quantity('length')).optional(),
  /** With a nail or 50 N at the seam, by hand. */
  seamOpens: value(z.boolean()).optional(),
  /** A try has failed when the case opened or a part came off. */
  drops: tries.optional(),
  dropHeight: quantity('length').optional(),
  /** Something on the mains side can be reached from outside, as bought or after the drops. */
  livePartTouchable: value(z.boolean()).optional(),
  senses: z.array(z.strictObject({ id, kind: z.enum(['sound', 'smell']), minute: quantity('time'), text: words })).optional(),
});
