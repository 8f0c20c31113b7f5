import { z } from 'zod';

/** The archive of one case. It holds a case folder (`case/`), everything that was ever saved (`history/`) and a list of it all. */
export const PACK_FORMAT = 'mainsworthy-pack/1';
export const MANIFEST = 'manifest.json';
export const FOLDER = 'case/';
export const CASE_DOCUMENT = `${FOLDER}case.json`;
export const REVISIONS = 'history/revisions.jsonl';
export const STATES = 'history/states.jsonl';
export const ASSESSMENTS = 'history/assessments.jsonl';
/** Files that only earlier revisions name, or that a folder could not hold under their name. */
export const EARLIER_FILES = 'history/files/';

export const MOST_ENTRIES = 10_000;
export const MOST_UNPACKED_BYTES = 2 * 1024 ** 3; // 2 GiB
/** The manifest and each part of the history are read at once; a case of 2 MB with thousands of edits stays far below. */
export const MOST_TEXT_BYTES = 256 * 1024 ** 2;

const sha256 = z.string().regex(/^[0-9a-f]{64}$/);
const count = z.number().int().nonnegative();

export const manifestSchema = z.strictObject({
  format: z.literal(PACK_FORMAT),
  case: z.strictObject({ id: z.string(), revision: count, archived: z.string().nullable() }),
  /** Photos that left without the place where they were taken: the hash they had, and the one they have in here. */
  withoutPlace: z.array(z.strictObject({ was: sha256, is: sha256 })),
  /** Everything but this list, by path. */
  entries: z.array(z.strictObject({ path: z.string(), bytes: count, sha256 })),
});
export type Manifest = z.infer<typeof manifestSchema>;

const json: z.ZodType<Json> = z.lazy(() =>
  z.union([z.null(), z.boolean(), z.number(), z.string(), z.array(json), z.record(z.string(), json)]),
);
type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

export const revisionSchema = z.strictObject({
  revision: count,
  at: z.string(),
  by: z.string(),
  step: z.string(),
  name: z.strictObject({ key: z.string(), args: z.record(z.string(), z.union([z.string(), z.number()])) }),
  of: z.string().optional(),
  changes: z.array(z.strictObject({ at: z.string(), was: json.optional(), to: json.optional(), after: z.string().nullable().optional() })),
  sha256,
});
export const stateSchema = z.strictObject({
  revision: count,
  state: z.strictObject({ case: z.record(z.string(), json), drafts: z.record(z.string(), json) }),
});
/** The bytes of a published Assessment, in base 64. */
export const assessmentSchema = z.strictObject({ revision: count, at: z.string(), sha256, bytes: z.base64() });
