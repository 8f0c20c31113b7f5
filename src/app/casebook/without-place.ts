import { createHash } from 'node:crypto';
import { type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { digestOf } from '../../core/result/digest.ts';
import { attachedFiles } from './attached-files.ts';
import type { CaseState } from './case-state.ts';
import type { CaseHistory, FileStore } from './casebook-store.ts';
import type { Change, Json } from './change.ts';
import { readWhole } from './read-whole.ts';
import { replayHistory } from './replay-history.ts';

/** Takes the place where a picture was taken out of its bytes, and nothing else; the same bytes where there is none. */
export type WithoutPlace = (bytes: Uint8Array, media: string) => Promise<Uint8Array>;

/** What stands in for a photo outside: by the hash it has in the casebook. */
export type Replacements = ReadonlyMap<string, { readonly sha256: string; readonly bytes: Uint8Array }>;

/**
 * Photos among these states that say where they were taken, without it. Where nobody gives a way to clean them, a case with photos is
 * refused: position data never leaves with an export.
 */
export async function findReplacements(
  states: Iterable<CaseState>,
  files: FileStore,
  withoutPlace: WithoutPlace | null,
): Promise<Replacements | Refusal> {
  const replacements = new Map<string, { sha256: string; bytes: Uint8Array }>();
  const seen = new Set<string>();
  for (const state of states)
    for (const { sha256, media, path } of attachedFiles(state)) {
      if (seen.has(sha256) || !/^(image|video)\//.test(media)) continue;
      seen.add(sha256);
      if (withoutPlace === null)
        return refuse('photo-not-cleaned', path, 'a case without photos: nothing here can take the place out of them yet', {
          place: '/files',
        });
      const bytes = await readWhole(files, sha256);
      const clean = await withoutPlace(bytes, media).catch((error: Error) => error);
      if (clean instanceof Error)
        return refuse('photo-not-cleaned', `${path} (${clean.message})`, 'a photo that can be opened to take its place out', {
          place: '/files',
        });
      const hash = createHash('sha256').update(clean).digest('hex');
      if (hash !== sha256) replacements.set(sha256, { sha256: hash, bytes: clean });
    }
  return replacements;
}

/** The state as if the photos had always been clean. */
export function replaceInState(state: CaseState, replacements: Replacements): CaseState {
  return replaceIn(state as unknown as Json, replacements) as unknown as CaseState;
}

/** The history as if the photos had always been clean, with the hashes that it then has. Published Assessments keep their bytes. */
export function replaceInHistory(history: CaseHistory, replacements: Replacements): CaseHistory {
  if (replacements.size === 0) return history;
  const states = history.states.map((kept) => ({ ...kept, state: replaceInState(kept.state, replacements) }));
  const revisions = history.revisions.map((revision) => ({
    ...revision,
    changes: replaceIn(revision.changes as unknown as Json, replacements) as unknown as Change[],
  }));
  const hashed = [...replayHistory(revisions, states)].map(({ revision, state }) => ({ ...revision, sha256: digestOf(state) }));
  return { ...history, states, revisions: hashed };
}

function replaceIn(value: Json, replacements: Replacements): Json {
  if (typeof value === 'string') return replacements.get(value)?.sha256 ?? value;
  if (Array.isArray(value)) return value.map((item: Json) => replaceIn(item, replacements));
  if (typeof value !== 'object' || value === null) return value;
  const tree = value as { readonly [key: string]: Json };
  const inside = Object.fromEntries(Object.entries(tree).map(([key, member]) => [key, replaceIn(member, replacements)]));
  const own = typeof tree['sha256'] === 'string' ? replacements.get(tree['sha256']) : undefined;
  return own !== undefined && typeof tree['bytes'] === 'number' ? { ...inside, bytes: own.bytes.length } : inside;
}
