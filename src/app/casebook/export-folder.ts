import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { attachedFiles } from './attached-files.ts';
import { documentText } from './case-document.ts';
import type { CasebookStore, CaseHead } from './casebook-store.ts';
import type { PackOptions } from './pack.ts';
import { isPlainPath } from './plain-path.ts';
import { stateAt } from './state-at.ts';
import { findReplacements, replaceInState } from './without-place.ts';
import { bytesPart, textPart } from './write-archive.ts';

/** Where a case folder is written. Nothing that is there already is touched. */
export interface FolderTarget {
  write(path: string, content: AsyncIterable<Uint8Array>): Promise<Refusal | null>;
}

/** Writes the newest state of a case as a case folder: the document and the files that it names. Drafts and history stay behind. */
export async function exportFolder(
  store: CasebookStore,
  id: string,
  target: FolderTarget,
  { withoutPlace }: PackOptions,
): Promise<CaseHead | Refusal> {
  const found = await stateAt(store, id);
  if (found === null) return refuse('case-missing', id, 'a case of this casebook');
  const replacements = await findReplacements([found.state], store.files, withoutPlace);
  if (isRefusal(replacements)) return replacements;
  const state = replaceInState(found.state, replacements);
  const clean = new Map([...replacements.values()].map((one) => [one.sha256, one.bytes]));
  const files = new Map(attachedFiles(state).map(({ path, sha256 }) => [path, sha256]));
  for (const [path, sha256] of files) {
    if (!isPlainPath(path)) return refuse('path-escapes', path, 'a plain path inside the case folder', { place: '/files' });
    if (!clean.has(sha256) && (await store.files.has(sha256)) === null)
      return refuse('file-missing', path, 'a file that the casebook holds', { place: '/files' });
  }
  for (const [path, sha256] of files) {
    const bytes = clean.get(sha256);
    const refusal = await target.write(path, bytes === undefined ? store.files.read(sha256) : bytesPart(path, bytes).read());
    if (refusal !== null) return refusal;
  }
  // last, so that a folder with a case.json is whole
  return (await target.write('case.json', textPart('case.json', documentText(state)).read())) ?? found.head;
}
