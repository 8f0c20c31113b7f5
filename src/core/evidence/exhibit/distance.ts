import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity, words } from '../typed.ts';
import { value } from '../value.ts';

/** One path between two conductors: along a surface, through air, or along printed wiring. One record is one path. */
export const distance = z.strictObject({
  ...base,
  kind: z.literal('distance'),
  from: id,
  to: id,
  path: z.enum(['surface', 'air', 'printedWiring']),
  value: value(quantity('length')),
  method: value(z.enum(['caliper', 'photo', 'gauge', 'microscope'])),
  /** A slot or groove on the way. `value` follows its walls; `straight` is the same way as if the slot were bridged at its mouth. */
  slot: value(z.strictObject({ width: quantity('length'), straight: quantity('length').optional() })).optional(),
  coating: value(z.enum(['solderMask', 'lacquer', 'potting'])).optional(),
  material: value(z.enum(['fr4', 'fr4HighCti', 'fr1', 'fr2', 'cem1', 'cem3', 'pbt', 'phenolic', 'pc', 'pet'])).optional(),
  cti: value(quantity('ratio')).optional(),
  moved: z.boolean().optional(),
  dirty: value(z.boolean()).optional(),
  boardSide: z.enum(['top', 'bottom']).optional(),
  photo: id.optional(),
  where: words.optional(),
});
