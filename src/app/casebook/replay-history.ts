import { applyChanges, type Conflict } from './apply-changes.ts';
import type { CaseState } from './case-state.ts';
import type { KeptState, Revision } from './casebook-store.ts';

export interface Replayed {
  readonly revision: Revision;
  readonly state: CaseState;
  /** Changes that do not fit what stood there: never, unless something was damaged. */
  readonly conflicts: readonly Conflict[];
}

/** Every state that a case went through, from the kept state of revision 1 on; nothing when that is missing. */
export function* replayHistory(revisions: readonly Revision[], states: readonly KeptState[]): Generator<Replayed> {
  let state = states.find(({ revision }) => revision === 1)?.state;
  for (const revision of revisions) {
    if (state === undefined) return;
    if (revision.revision === 1) yield { revision, state, conflicts: [] };
    else {
      const applied = applyChanges(state, revision.changes);
      state = applied.state;
      yield { revision, state, conflicts: applied.conflicts };
    }
  }
}
