import { z } from 'zod';

/** What the traced circuit is, by its graph; names as a reader knows them. */
export const circuit = z.strictObject({
  topology: z.strictObject({
    converter: z.string().nullable(),
    rectifier: z.string().nullable(),
    drive: z.string().nullable(),
    feedback: z.string().nullable(),
    isolated: z.boolean().nullable(),
  }),
  /** Each part with what it is there for, between which nets and because of which parts; null where it was not recognised. */
  jobs: z.array(
    z.strictObject({ part: z.string(), ref: z.string(), job: z.string().nullable(), at: z.array(z.string()), with: z.array(z.string()) }),
  ),
  /** Ways across the barrier through parts alone, shortest first. */
  ways: z.array(z.strictObject({ parts: z.array(z.string()), nets: z.array(z.string()) })),
  /** How far tolerances let the set output stray, by level, V; left out where no tolerance is known. */
  spreads: z
    .array(
      z.strictObject({
        level: z.string(),
        about: z.string(),
        /** Midway between the edges; half width as a root of the sum of squares. */
        middle: z.number(),
        half: z.number(),
        /** Everything at its edge at once. */
        least: z.number(),
        most: z.number(),
        /** Seeded draws: how many, the outermost, and how many fell into each of equal steps between those. */
        draws: z.number(),
        from: z.number(),
        to: z.number(),
        counts: z.array(z.number()),
        window: z.tuple([z.number(), z.number()]).nullable(),
        harmful: z.number().nullable(),
        /** Where the half width comes from. */
        step: z.string(),
      }),
    )
    .optional(),
});
export type CircuitResult = z.infer<typeof circuit>;
