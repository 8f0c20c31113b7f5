import type { ChapterView } from './chapter-view.ts';
import type { FindingRow } from './finding-row.ts';
import type { WorkspaceView } from './workspace-view.ts';

/** What of a view became different: rows by id, the rest whole. A member that is missing stayed as it was. */
export interface ViewChange {
  readonly rows: readonly FindingRow[];
  readonly gone: readonly string[];
  readonly chapters: readonly ChapterView[];
  readonly rest: Partial<Omit<WorkspaceView, 'rows' | 'chapters'>>;
}

const WHOLE = ['verdict', 'tally', 'groups', 'next', 'lastChance', 'laboratory', 'caution', 'taken', 'warnings', 'points'] as const;

export function toViewChange(before: WorkspaceView, after: WorkspaceView): ViewChange {
  const rest: Record<string, unknown> = {};
  for (const key of WHOLE)
    if (before[key] !== after[key] && JSON.stringify(before[key]) !== JSON.stringify(after[key])) rest[key] = after[key];
  const ids = new Set(after.rows.map(({ id }) => id));
  return {
    rows: changed(before.rows, after.rows),
    gone: before.rows.map(({ id }) => id).filter((id) => !ids.has(id)),
    chapters: changed(before.chapters, after.chapters),
    rest: rest as ViewChange['rest'],
  };
}

function changed<T extends { readonly id: string }>(before: readonly T[], after: readonly T[]): T[] {
  const old = new Map(before.map((one) => [one.id, one]));
  return after.filter((one) => old.get(one.id) !== one && JSON.stringify(old.get(one.id)) !== JSON.stringify(one));
}

/** The view after a change; rows keep the order of the groups that name them. */
export function withViewChange(view: WorkspaceView, change: ViewChange): WorkspaceView {
  const gone = new Set(change.gone);
  const rows = new Map(view.rows.filter(({ id }) => !gone.has(id)).map((row) => [row.id, row]));
  for (const row of change.rows) rows.set(row.id, row);
  const chapters = new Map(view.chapters.map((chapter) => [chapter.id, chapter]));
  for (const chapter of change.chapters) chapters.set(chapter.id, chapter);
  return { ...view, ...change.rest, rows: [...rows.values()], chapters: [...chapters.values()] };
}
