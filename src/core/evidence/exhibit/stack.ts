import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity, words } from '../typed.ts';
import { value } from '../value.ts';

const winding = z.strictObject({
  id,
  photo: id.optional(),
  is: z.literal('winding'),
  name: words,
  turns: value(quantity('ratio')),
  layers: value(quantity('ratio')).optional(),
  wire: value(quantity('length')).optional(),
  overall: value(quantity('length')).optional(),
  strands: value(quantity('ratio')).optional(),
  wireKind: value(z.enum(['enamelled', 'fullyInsulated', 'tripleInsulated', 'tapeCovered'])),
  pins: z.tuple([value(id), value(id)]).optional(),
});

const insulation = z.strictObject({
  id,
  photo: id.optional(),
  is: z.literal('insulation'),
  material: value(words).optional(),
  layers: value(quantity('ratio')),
  each: value(quantity('length')).optional(),
  covers: value(z.enum(['whole', 'stopsShort'])),
  margins: z.tuple([value(quantity('length')), value(quantity('length'))]).optional(),
  sleeved: value(z.boolean()).optional(),
});

/** Windings and insulation of a transformer in the order in which they come off, outside in. */
export const stack = z.strictObject({
  ...base,
  kind: z.literal('stack'),
  part: id,
  core: value(words),
  gap: value(quantity('length')).optional(),
  inductance: value(quantity('inductance')).optional(),
  leakage: value(quantity('inductance')).optional(),
  outsideIn: z.array(z.discriminatedUnion('is', [winding, insulation])),
});
