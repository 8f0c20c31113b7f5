import { z } from 'zod';

const way = z.strictObject({
  id: z.string(),
  ends: z.tuple([z.string(), z.string()]),
  kind: z.enum(['air', 'surface', 'part', 'optocoupler', 'through', 'edge', 'lead', 'core', 'joint']),
  about: z.string(),
  /** What is surely there, and what it comes to if everything open turns out well. */
  low: z.number(),
  high: z.number(),
  notLooked: z.boolean(),
  fields: z.array(z.string()),
});
const path = z.strictObject({ ways: z.array(z.string()), nodes: z.array(z.string()), strength: z.number(), failures: z.number() });

/** What stands between the mains and a hand, as conductors and the ways between them. Strength in layers: 1 is basic, 2 double or reinforced. */
export const barrierMap = z.strictObject({
  nodes: z.array(z.strictObject({ id: z.string(), name: z.string(), stands: z.enum(['mains', 'hand', 'between']) })),
  ways: z.array(way),
  /** Weakest paths by what is surely there, weakest first; ways from the mains outwards. */
  weakest: z.array(path),
  /** The path that is weakest even if everything open turns out well. */
  atBest: path.nullable(),
  /** Fewest pieces that must fail before the mains reaches a hand. */
  fewest: path.nullable(),
  /** Of all sets of ways that every path goes through, the one whose strengths add up to least. */
  waist: z.strictObject({ ways: z.array(z.string()), strength: z.number() }).nullable(),
  /** Ways between earth and either side: shown, and no paths. Left out where nothing was recorded. */
  earth: z
    .strictObject({
      nodes: z.array(z.strictObject({ id: z.string(), name: z.string(), stands: z.enum(['mains', 'hand', 'between', 'earth']) })),
      ways: z.array(way),
    })
    .optional(),
  missing: z.array(z.string()),
  open: z.array(z.string()),
});
export type BarrierMap = z.infer<typeof barrierMap>;
