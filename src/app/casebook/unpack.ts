import { createHash } from 'node:crypto';
import type { z } from 'zod';
import { parseCase } from '../../core/evidence/parse-case.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { digestOf } from '../../core/result/digest.ts';
import { documentText } from './case-document.ts';
import { CasebookRefused } from './casebook-refused.ts';
import type { CasebookStore, CaseHead, CaseHistory } from './casebook-store.ts';
import { fileNames } from './pack.ts';
import {
  ASSESSMENTS,
  assessmentSchema,
  CASE_DOCUMENT,
  MANIFEST,
  type Manifest,
  manifestSchema,
  PACK_FORMAT,
  REVISIONS,
  revisionSchema,
  STATES,
  stateSchema,
} from './pack-format.ts';
import { type ArchiveBytes, readArchive, readText } from './read-archive.ts';
import { replayHistory } from './replay-history.ts';
import { type ArchivePart, writeArchive } from './write-archive.ts';

type Parts = ReadonlyMap<string, ArchivePart>;

/** A packed case of which every byte has been looked at. */
export interface Packed {
  readonly id: string;
  readonly history: CaseHistory;
  readonly parts: Parts;
}

/** Takes a packed case into a casebook, whole or not at all. `at` is the time that the uploads carry while they last. */
export async function unpack(store: CasebookStore, archive: ArchiveBytes, at: string): Promise<CaseHead | Refusal> {
  const packed = await readPack(archive);
  return isRefusal(packed) ? packed : admitPack(store, packed, at);
}

/** Looks at everything in an archive before any casebook is touched. */
export async function readPack(archive: ArchiveBytes): Promise<Packed | Refusal> {
  const parts = await readArchive(archive);
  if (isRefusal(parts)) return parts;
  const manifest = await readManifest(parts);
  if (isRefusal(manifest)) return manifest;
  const wrong = (await compareEntries(parts, manifest)) ?? (await compareLayout(archive, parts));
  if (wrong !== null) return wrong;
  const history = await readHistoryOrRefuse(parts, manifest);
  return isRefusal(history) ? history : { id: manifest.case.id, history, parts };
}

export async function admitPack(store: CasebookStore, { id, history, parts }: Packed, at: string): Promise<CaseHead | Refusal> {
  if ((await store.cases.head(id)) !== null)
    return refuse('case-exists', id, 'a case that this casebook does not have yet, nor ever had', { place: MANIFEST });
  try {
    for (const [sha256, path] of fileNames(history)) await takeFile(store, getPart(parts, path), sha256, at);
    return await store.cases.admit(id, history);
  } catch (error) {
    if (error instanceof CasebookRefused) return error.refusal;
    throw error;
  }
}

async function readManifest(parts: Parts): Promise<Manifest | Refusal> {
  const part = parts.get(MANIFEST);
  if (part === undefined) return refuse('entry-missing', 'no manifest', `an archive with a ${MANIFEST}`);
  const json = parseLines(await readText(part), MANIFEST, (text) => [text]);
  if (isRefusal(json)) return json;
  const format = (json[0] as { format?: unknown } | null)?.format;
  const version = typeof format === 'string' && /^mainsworthy-pack\/(\d+)$/.exec(format);
  if (version && format !== PACK_FORMAT)
    return refuse('pack-newer', String(format), `${PACK_FORMAT}; a newer tool made this one`, { place: MANIFEST });
  const manifest = parseAs(manifestSchema, json[0], MANIFEST);
  return manifest;
}

/** The same names on both sides, and each entry the bytes that the manifest says. */
async function compareEntries(parts: Parts, { entries }: Manifest): Promise<Refusal | null> {
  const listed = new Set([MANIFEST, ...entries.map(({ path }) => path)]);
  for (const path of parts.keys())
    if (!listed.has(path)) return refuse('entry-extra', path, 'only what the manifest lists', { place: path });
  for (const { path, bytes, sha256 } of entries) {
    const part = parts.get(path);
    if (part === undefined) return refuse('entry-missing', path, 'everything that the manifest lists', { place: path });
    const hash = createHash('sha256');
    try {
      for await (const chunk of part.read()) hash.update(chunk);
    } catch (error) {
      return refuse('not-an-archive', (error as Error).message, 'an entry that can be read', { place: path });
    }
    const found = hash.digest('hex');
    if (part.bytes !== bytes || found !== sha256)
      return refuse('hash-differs', `${part.bytes} bytes with ${found}`, `the ${bytes} bytes with ${sha256} that were packed`, {
        place: path,
      });
  }
  return null;
}

/**
 * An archive follows from its parts, so packing them again must give the very same bytes. This finds what no hash of an entry covers: a
 * changed byte between them, something hidden in a gap, another time or mode.
 */
async function compareLayout(archive: ArchiveBytes, parts: Parts): Promise<Refusal | null> {
  const [was, is] = [createHash('sha256'), createHash('sha256')];
  for await (const chunk of archive.read(0, archive.bytes)) was.update(chunk);
  for await (const chunk of writeArchive([...parts.values()])) is.update(chunk);
  return was.digest('hex') === is.digest('hex')
    ? null
    : refuse('layout-differs', 'bytes around the entries that are not ours', 'an archive as it was packed');
}

/** What cannot even be gone through (nested without end, names that have no canonical text) is the archive's fault, not a defect. */
async function readHistoryOrRefuse(parts: Parts, manifest: Manifest): Promise<CaseHistory | Refusal> {
  try {
    return await readHistory(parts, manifest);
  } catch (error) {
    return refuse('history-broken', (error as Error).message, 'a history that can be replayed', { place: REVISIONS });
  }
}

/** Every revision replayed and held against its hash; every file that any of them names is there, and no other. */
async function readHistory(parts: Parts, { case: { id, revision: newest, archived }, entries }: Manifest): Promise<CaseHistory | Refusal> {
  const revisions = await readLines(parts, REVISIONS, revisionSchema);
  if (isRefusal(revisions)) return revisions;
  const states = await readLines(parts, STATES, stateSchema);
  if (isRefusal(states)) return states;
  const published = await readLines(parts, ASSESSMENTS, assessmentSchema);
  if (isRefusal(published)) return published;
  const assessments = published.map((one) => ({ ...one, bytes: new Uint8Array(Buffer.from(one.bytes, 'base64')) }));
  const history: CaseHistory = { archived, revisions, states, assessments };
  const bad = (got: string, expected: string, place: string) => refuse('history-broken', got, expected, { place });
  let last = null;
  for (const { revision, state, conflicts } of replayHistory(revisions, states)) {
    const place = `${REVISIONS} line ${revision.revision}`;
    if (conflicts[0] !== undefined) return bad(conflicts[0].at, 'a change that fits what stood there', place);
    if (digestOf(state) !== revision.sha256) return bad(revision.sha256, 'the hash of the state after it', place);
    const kept = states.find((one) => one.revision === revision.revision);
    if (kept !== undefined && digestOf(kept.state) !== revision.sha256)
      return bad(`state ${kept.revision}`, 'the state of its revision', STATES);
    last = state;
  }
  if (last === null || revisions.length !== newest || revisions.some(({ revision }, index) => revision !== index + 1))
    return bad(`${revisions.length} revisions`, `${newest} from 1 on without a gap, with the first state`, REVISIONS);
  if (states.some(({ revision }) => revision > newest) || assessments.some(({ revision }) => revision > newest))
    return bad('a later revision', `at most ${newest}`, STATES);
  if (new Set(states.map(({ revision }) => revision)).size !== states.length) return bad('a state twice', 'each state once', STATES);
  for (const { sha256, bytes } of assessments)
    if (createHash('sha256').update(bytes).digest('hex') !== sha256) return bad(sha256, 'the hash of its Assessment', ASSESSMENTS);
  const one = parseCase(last.case);
  if (Array.isArray(one)) return one[0] ?? bad('a case', 'a case that can be read', CASE_DOCUMENT);
  if (one.id !== id) return bad(one.id, `the case ${id}`, CASE_DOCUMENT);
  if ((await readText(getPart(parts, CASE_DOCUMENT))) !== documentText(last))
    return bad('another document', 'the newest state', CASE_DOCUMENT);
  const due = new Map([...fileNames(history)].map(([sha256, path]) => [path, sha256]));
  for (const { path, sha256 } of entries) {
    if ([CASE_DOCUMENT, REVISIONS, STATES, ASSESSMENTS].includes(path)) continue;
    if (due.get(path) !== sha256) return refuse('entry-extra', path, 'only files that the case names', { place: path });
    due.delete(path);
  }
  const [missing] = due.keys();
  return missing === undefined ? history : refuse('entry-missing', missing, 'every file that the case names', { place: missing });
}

async function readLines<T>(parts: Parts, path: string, schema: z.ZodType<T>): Promise<T[] | Refusal> {
  const part = parts.get(path);
  if (part === undefined) return refuse('entry-missing', path, 'the whole history', { place: path });
  const values = parseLines(await readText(part), path, (text) => text.split('\n').slice(0, -1));
  if (isRefusal(values)) return values;
  const read: T[] = [];
  for (const [index, value] of values.entries()) {
    const one = parseAs(schema, value, `${path} line ${index + 1}`);
    if (isRefusal(one)) return one;
    read.push(one);
  }
  return read;
}

function parseLines(text: string | Refusal, place: string, split: (text: string) => string[]): unknown[] | Refusal {
  if (isRefusal(text)) return text;
  try {
    return split(text).map((line) => JSON.parse(line) as unknown);
  } catch (error) {
    return refuse('not-json', (error as Error).message, 'JSON', { place });
  }
}

function parseAs<T>(schema: z.ZodType<T>, value: unknown, place: string): T | Refusal {
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  return refuse('wrong-shape', issue?.message ?? '', `what ${PACK_FORMAT} holds here`, {
    place: `${place} /${issue?.path.join('/') ?? ''}`,
  });
}

async function takeFile(store: CasebookStore, part: ArchivePart, sha256: string, at: string): Promise<void> {
  if ((await store.files.has(sha256)) !== null) return;
  const upload = await store.files.begin(at);
  try {
    for await (const chunk of part.read()) await upload.write(chunk);
    const kept = await upload.finish();
    if (kept.sha256 !== sha256) throw new CasebookRefused(refuse('hash-differs', kept.sha256, sha256, { place: part.path }));
  } catch (error) {
    await upload.abort();
    throw error;
  }
}

function getPart(parts: Parts, path: string): ArchivePart {
  const part = parts.get(path);
  if (part === undefined) throw new Error(`${path} was there when it was checked`);
  return part;
}
