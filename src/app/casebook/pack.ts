import { createHash } from 'node:crypto';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { attachedFiles } from './attached-files.ts';
import { documentText } from './case-document.ts';
import type { CasebookStore, CaseHistory } from './casebook-store.ts';
import {
  ASSESSMENTS,
  CASE_DOCUMENT,
  EARLIER_FILES,
  FOLDER,
  MANIFEST,
  type Manifest,
  MOST_ENTRIES,
  MOST_UNPACKED_BYTES,
  PACK_FORMAT,
  REVISIONS,
  STATES,
} from './pack-format.ts';
import { isPlainPath } from './plain-path.ts';
import { replayHistory } from './replay-history.ts';
import { findReplacements, type Replacements, replaceInHistory, type WithoutPlace } from './without-place.ts';
import { type ArchivePart, bytesPart, textPart, writeArchive } from './write-archive.ts';

export interface PackOptions {
  /** Takes position data out of photos; null where there is no way to, which refuses a case with photos. */
  readonly withoutPlace: WithoutPlace | null;
}

/**
 * One case with its files and its whole history as the bytes of a zip, the same for the same case. What it names and does not hold is
 * refused before the first byte.
 */
export async function pack(store: CasebookStore, id: string, { withoutPlace }: PackOptions): Promise<AsyncIterable<Uint8Array> | Refusal> {
  const head = await store.cases.head(id);
  if (head === null || head.removed !== null) return refuse('case-missing', id, 'a case of this casebook');
  const kept = await historyOf(store, id, head.archived);
  const states = () => [...replayHistory(kept.revisions, kept.states)].map(({ state }) => state);
  const replacements = await findReplacements(states(), store.files, withoutPlace);
  if (isRefusal(replacements)) return replacements;
  const history = replaceInHistory(kept, replacements);
  const files = await fileParts(store, history, replacements);
  if (isRefusal(files)) return files;
  const parts = [...textParts(history), ...files].sort((a, b) => (a.path < b.path ? -1 : 1));
  const bytes = parts.reduce((sum, part) => sum + part.bytes, 0);
  if (parts.length >= MOST_ENTRIES || bytes > MOST_UNPACKED_BYTES)
    return refuse(
      'too-large',
      `${parts.length} entries with ${bytes} bytes`,
      `fewer than ${MOST_ENTRIES} entries, at most ${MOST_UNPACKED_BYTES} bytes`,
    );
  const manifest: Manifest = {
    format: PACK_FORMAT,
    case: { id, revision: head.revision, archived: head.archived },
    withoutPlace: [...replacements].map(([was, { sha256: is }]) => ({ was, is })).sort((a, b) => (a.was < b.was ? -1 : 1)),
    entries: await Promise.all(parts.map(async (part) => ({ path: part.path, bytes: part.bytes, sha256: await hashOf(part) }))),
  };
  return writeArchive([textPart(MANIFEST, `${JSON.stringify(manifest, null, 1)}\n`), ...parts]);
}

async function historyOf(store: CasebookStore, id: string, archived: string | null): Promise<CaseHistory> {
  return {
    archived,
    revisions: await store.cases.revisions(id, 1),
    states: await store.cases.states(id),
    assessments: await store.cases.assessments(id),
  };
}

/** The document and the history, one JSON value a line. */
function textParts(history: CaseHistory): ArchivePart[] {
  const newest = [...replayHistory(history.revisions, history.states)].at(-1);
  if (newest === undefined) throw new Error('a case without a first state');
  const lines = (values: readonly unknown[]) => values.map((value) => `${JSON.stringify(value)}\n`).join('');
  const published = history.assessments.map(({ bytes, ...one }) => ({ ...one, bytes: Buffer.from(bytes).toString('base64') }));
  return [
    textPart(CASE_DOCUMENT, documentText(newest.state)),
    textPart(REVISIONS, lines(history.revisions)),
    textPart(STATES, lines(history.states)),
    textPart(ASSESSMENTS, lines(published)),
  ];
}

/** Each file once: by its name in the folder if the case names it now, else by its hash. */
async function fileParts(store: CasebookStore, history: CaseHistory, replacements: Replacements): Promise<ArchivePart[] | Refusal> {
  const clean = new Map([...replacements.values()].map((one) => [one.sha256, one.bytes]));
  const names = fileNames(history);
  const parts: ArchivePart[] = [];
  for (const [sha256, path] of names) {
    const bytes = clean.get(sha256);
    if (bytes !== undefined) {
      parts.push(bytesPart(path, bytes));
      continue;
    }
    const file = await store.files.has(sha256);
    if (file === null) return refuse('file-missing', sha256, 'a file that the casebook holds', { place: '/files' });
    parts.push({ path, bytes: file.bytes, read: () => store.files.read(sha256) });
  }
  return parts;
}

/** Where each file of the history stands in the archive, by its hash. */
export function fileNames(history: CaseHistory): Map<string, string> {
  const states = [...replayHistory(history.revisions, history.states)].map(({ state }) => state);
  const names = new Map<string, string>();
  const taken = new Set([CASE_DOCUMENT.toLowerCase()]);
  for (const { sha256, path } of attachedFiles(states.at(-1) ?? { case: {}, drafts: {} })) {
    const inFolder = `${FOLDER}${path}`;
    if (names.has(sha256) || !isPlainPath(inFolder) || taken.has(inFolder.toLowerCase())) continue;
    taken.add(inFolder.toLowerCase());
    names.set(sha256, inFolder);
  }
  for (const state of states)
    for (const { sha256 } of attachedFiles(state)) if (!names.has(sha256)) names.set(sha256, `${EARLIER_FILES}${sha256}`);
  return names;
}

async function hashOf(part: ArchivePart): Promise<string> {
  const hash = createHash('sha256');
  for await (const chunk of part.read()) hash.update(chunk);
  return hash.digest('hex');
}
