import { applyChanges } from './apply-changes.ts';
import type { CaseState } from './case-state.ts';
import type { CasebookStore, CaseHead } from './casebook-store.ts';

/** A case as it stood after a revision, the newest without one; null when there is no such case or it was removed. */
export async function stateAt(store: CasebookStore, id: string, revision?: number): Promise<{ head: CaseHead; state: CaseState } | null> {
  const read = await store.cases.read(id, revision);
  if (read === null || read.head.removed !== null) return null;
  return { head: read.head, state: read.since.reduce((state, { changes }) => applyChanges(state, changes).state, read.from.state) };
}
