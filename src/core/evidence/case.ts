import { z } from 'zod';
import { day, milestone } from './day.ts';
import { EXHIBITS } from './exhibit/registry.ts';
import { instrument } from './instrument.ts';
import { conductor, pad, part, place, port } from './sample.ts';
import { setting } from './setting.ts';
import { id, sha256, words } from './typed.ts';

export const CASE_FORMAT = 'mainsworthy-case/1';

/** A file of the case folder. `sha256` is over its raw bytes; `settled` holds a person's answers to what the file did not say. */
export const attachment = z.strictObject({
  id,
  path: words,
  sha256,
  bytes: z.number().int().nonnegative(),
  media: words,
  settled: z.record(z.string(), z.string()).optional(),
});
export type Attachment = z.infer<typeof attachment>;

/** A result too slow for `assess`, kept with what it was made from; stale when the key no longer matches. */
export const computed = z.strictObject({ id, recipe: words, key: sha256, from: z.array(words), file: id });

export const exhibit = z.discriminatedUnion('kind', [...EXHIBITS]);
export type Exhibit = z.infer<typeof exhibit>;
export type ExhibitOf<K extends Exhibit['kind']> = Extract<Exhibit, { kind: K }>;

/** One sample under examination, from label to verdict: all evidence, nothing worked out. */
export const caseDocument = z.strictObject({
  format: z.literal(CASE_FORMAT),
  id,
  product: z.strictObject({ id, name: words }),
  sample: words,
  examinedBy: words.optional(),
  invented: z.literal(true).optional(),
  setting,
  instruments: z.array(instrument).default([]),
  days: z.array(day).default([]),
  events: z.array(milestone).default([]),
  ports: z.array(port).default([]),
  conductors: z.array(conductor).default([]),
  parts: z.array(part).default([]),
  places: z.array(place).default([]),
  exhibits: z.array(exhibit).default([]),
  correlations: z.array(z.strictObject({ a: words, b: words, r: z.number().min(-1).max(1), because: words })).optional(),
  files: z.array(attachment).default([]),
  /** Where the pins of parts lie on photos of the board. */
  pads: z.array(pad).optional(),
  computed: z.array(computed).optional(),
});
export type Case = z.infer<typeof caseDocument>;
/** As a person writes it: lists may be left out. */
export type CaseInput = z.input<typeof caseDocument>;
