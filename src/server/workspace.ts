import type { CasebookStore } from '../app/casebook/casebook-store.ts';
import type { Desk } from '../app/casebook/desk.ts';
import type { RunDesk } from '../app/circuit/run-desk.ts';
import type { Access } from './access.ts';

/** What the server stands on; all of it chosen by the one who starts it. */
export interface Workspace {
  readonly store: CasebookStore;
  readonly desk: Desk;
  /** Runs of traced circuits. */
  readonly runs: RunDesk;
  /** Folder of the built pages. */
  readonly pages: string;
  readonly access: Access;
  /** The time in ISO 8601. */
  readonly now: () => string;
  /** Ends the streams of events when the server stops. */
  readonly stopping: AbortSignal;
}
