import { isRefusal, type Refusal } from '../../core/quantity/refusal.ts';
import { digestOf } from '../../core/result/digest.ts';
import type { CaseSource } from '../case-source.ts';
import { openCase } from '../open-case.ts';
import type { CaseState } from './case-state.ts';
import { CasebookRefused } from './casebook-refused.ts';
import type { CasebookStore, CaseHead } from './casebook-store.ts';

export interface Importing {
  readonly at: string;
  readonly by: string;
  readonly step: string;
}

/**
 * Takes a case folder into a casebook as a new case at revision 1, with its files. Refused where the folder does not open as a case, with
 * everything that is wrong, or where the id is taken.
 */
export async function importFolder(store: CasebookStore, source: CaseSource, { at, by, step }: Importing): Promise<CaseHead | Refusal[]> {
  const open = await openCase(source);
  if (Array.isArray(open)) return open;
  const bytes = await source.readCase();
  if (isRefusal(bytes)) return [bytes];
  // as typed: what the schema would fill in is not written into the case
  const state: CaseState = { case: JSON.parse(new TextDecoder().decode(bytes)) as CaseState['case'], drafts: {} };
  try {
    for (const { path, sha256 } of open.one.files) {
      if ((await store.files.has(sha256)) !== null) continue;
      const content = await source.readFile(path);
      if (isRefusal(content)) return [content];
      const upload = await store.files.begin(at);
      try {
        await upload.write(content);
        await upload.finish();
      } catch (error) {
        await upload.abort();
        throw error;
      }
    }
    const name = { key: 'import', args: {} };
    const head = await store.cases.create(open.one.id, { at, by, step, name, changes: [], sha256: digestOf(state), state });
    return isRefusal(head) ? [head] : head;
  } catch (error) {
    if (error instanceof CasebookRefused) return [error.refusal];
    throw error;
  }
}
