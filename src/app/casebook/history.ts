import type { Revision } from './casebook-store.ts';
import type { StepName } from './desk.ts';

/** One step of undo: every revision that belongs to it, first to last. */
export interface HistoryStep {
  readonly step: string;
  readonly name: StepName;
  readonly revisions: readonly Revision[];
}

export interface History {
  /** Steps that can be taken back, the last one first to go. */
  readonly done: readonly HistoryStep[];
  /** Steps taken back that can be brought back. */
  readonly undone: readonly HistoryStep[];
}

export const NO_HISTORY: History = { done: [], undone: [] };

/** The history after one more revision: an edit joins the step it names or opens a new one, and ends what could be brought back. */
export function addRevision(history: History, revision: Revision): History {
  if (revision.of !== undefined) return move(history, revision);
  if (revision.revision === 1) return history; // the case as it was made is not undone
  const last = history.done.at(-1);
  if (last !== undefined && last.step === revision.step)
    return { done: [...history.done.slice(0, -1), { ...last, revisions: [...last.revisions, revision] }], undone: [] };
  return { done: [...history.done, { step: revision.step, name: revision.name, revisions: [revision] }], undone: [] };
}

function move({ done, undone }: History, { of, name }: Revision): History {
  if (name.key === 'undo') {
    const step = done.findLast((one) => one.step === of);
    return step === undefined ? { done, undone } : { done: done.filter((one) => one !== step), undone: [...undone, step] };
  }
  const step = undone.findLast((one) => one.step === of);
  return step === undefined ? { done, undone } : { done: [...done, step], undone: undone.filter((one) => one !== step) };
}
