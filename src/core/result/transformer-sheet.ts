import { z } from 'zod';

/** As in the Assessment: SI; u null = unknown. */
const amount = z.strictObject({
  value: z.number(),
  unit: z.string(),
  u: z.number().nullable(),
  side: z.enum(['below', 'above', 'anywhere']).optional(),
});
const metres = z.number().nullable();

/** One transformer, ready to be drawn and listed: its layers outside in, what it can do, and what is missing for the rest. */
export const transformerSheet = z.strictObject({
  exhibit: z.string(),
  part: z.string(),
  name: z.string(),
  core: z.string().nullable(),
  gap: metres,
  window: z.strictObject({ width: z.number(), height: z.number() }).nullable(),
  former: z.strictObject({ tube: z.number(), wall: z.number() }).nullable(),
  layers: z.array(
    z.discriminatedUnion('is', [
      z.strictObject({
        is: z.literal('winding'),
        id: z.string(),
        name: z.string(),
        stands: z.enum(['mains', 'hand', 'between', 'unknown']),
        role: z.enum(['primary', 'secondary', 'auxiliary', 'screen']).nullable(),
        turns: z.number().nullable(),
        rows: z.number().nullable(),
        strands: z.number().nullable(),
        wire: metres,
        overall: metres,
        wireKind: z.string().nullable(),
        margins: z.tuple([metres, metres]),
        /** Wire ends that cross other layers; sleeved null where nobody could tell or looked. */
        leads: z.array(
          z.strictObject({
            id: z.string(),
            end: z.enum(['start', 'finish']).nullable(),
            crosses: z.array(z.string()),
            sleeved: z.boolean().nullable(),
          }),
        ),
      }),
      z.strictObject({
        is: z.literal('insulation'),
        id: z.string(),
        count: z.number().nullable(),
        each: metres,
        covers: z.enum(['whole', 'stopsShort']).nullable(),
        short: metres,
        folded: z.boolean(),
      }),
    ]),
  ),
  /** The weakest way between a winding of the mains side and one of the other: by the id it has on the barrier map. */
  weakest: z
    .strictObject({ way: z.string(), kind: z.enum(['through', 'edge', 'lead']), between: z.tuple([z.string(), z.string()]) })
    .nullable(),
  numbers: z.array(z.strictObject({ key: z.string(), about: z.string().nullable(), value: amount, step: z.string() })),
  blocked: z.array(z.strictObject({ key: z.string(), missing: z.array(z.string()) })),
  /** Turns counted and ratio seen, where they contradict each other. */
  disagree: z.strictObject({ counted: z.number(), seen: z.number() }).nullable(),
});
export type TransformerSheet = z.infer<typeof transformerSheet>;
