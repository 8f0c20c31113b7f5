import type { ChapterView } from './chapter-view.ts';
import type { FindingRow } from './finding-row.ts';
import { textOnce } from './finding-texts.ts';
import type { WorkspaceView } from './workspace-view.ts';

type Figure = ChapterView['figures'][number];

/** What of a chapter became different. A figure that stayed as it was is told by where it stood before. */
export interface ChapterChange {
  readonly id: ChapterView['id'];
  readonly parts: Partial<Omit<ChapterView, 'id' | 'figures'>>;
  readonly figures?: readonly (Figure | number)[];
}

/** What of a view became different: rows by id, chapters by their members, the rest whole. A member that is missing stayed as it was. */
export interface ViewChange {
  readonly rows: readonly FindingRow[];
  readonly gone: readonly string[];
  readonly chapters: readonly ChapterChange[];
  readonly rest: Partial<Omit<WorkspaceView, 'rows' | 'chapters'>>;
}

type Whole = Exclude<keyof WorkspaceView, 'rows' | 'chapters'>;

/** Every member that goes whole; the compiler says so when one is forgotten. */
const WHOLE = Object.keys({
  verdict: true,
  tally: true,
  groups: true,
  next: true,
  lastChance: true,
  laboratory: true,
  caution: true,
  taken: true,
  warnings: true,
  soaks: true,
  pictures: true,
  points: true,
} satisfies Record<Whole, true>) as Whole[];

export function toViewChange(before: WorkspaceView, after: WorkspaceView): ViewChange {
  const rest: Record<string, unknown> = {};
  for (const key of WHOLE) if (!says(before[key], after[key])) rest[key] = after[key];
  const ids = new Set(after.rows.map(({ id }) => id));
  return {
    rows: changed(before.rows, after.rows),
    gone: before.rows.map(({ id }) => id).filter((id) => !ids.has(id)),
    chapters: changedChapters(before.chapters, after.chapters),
    rest: rest as ViewChange['rest'],
  };
}

function changed<T extends { readonly id: string }>(before: readonly T[], after: readonly T[]): T[] {
  const old = new Map(before.map((one) => [one.id, one]));
  return after.filter((one) => !says(old.get(one.id), one));
}

function changedChapters(before: readonly ChapterView[], after: readonly ChapterView[]): ChapterChange[] {
  const old = new Map(before.map((chapter) => [chapter.id, chapter]));
  return after.flatMap((chapter) => {
    const was = old.get(chapter.id);
    return was === chapter ? [] : (chapterChange(was, chapter) ?? []);
  });
}

function chapterChange(was: ChapterView | undefined, { id, figures, ...members }: ChapterView): ChapterChange | null {
  const moved = Object.entries(members).filter(([key, member]) => !says(was?.[key as keyof ChapterView], member));
  const drawn = figures.map((figure) => {
    const at = was?.figures.findIndex((other) => says(other, figure)) ?? -1;
    return at === -1 ? figure : at;
  });
  const sameFigures = was !== undefined && drawn.length === was.figures.length && drawn.every((figure, index) => figure === index);
  if (moved.length === 0 && sameFigures) return null;
  return { id, parts: Object.fromEntries(moved) as ChapterChange['parts'], ...(sameFigures ? {} : { figures: drawn }) };
}

function says(one: unknown, other: unknown): boolean {
  return one === other || textOf(one) === textOf(other);
}

/** What a view is made of is not changed any more: its text is written once. */
function textOf(value: unknown): string | undefined {
  return typeof value === 'object' && value !== null ? textOnce(value) : JSON.stringify(value);
}

function withChapterChange(was: ChapterView | undefined, { id, parts, figures }: ChapterChange): ChapterView {
  const kept = was?.figures ?? [];
  return {
    ...was,
    ...parts,
    id,
    // a figure that is told by its place was there before
    figures: figures === undefined ? kept : figures.map((figure) => (typeof figure === 'number' ? (kept[figure] as Figure) : figure)),
  } as ChapterView;
}

/** The view after a change; rows keep the order of the groups that name them. */
export function withViewChange(view: WorkspaceView, change: ViewChange): WorkspaceView {
  const gone = new Set(change.gone);
  const rows = new Map(view.rows.filter(({ id }) => !gone.has(id)).map((row) => [row.id, row]));
  for (const row of change.rows) rows.set(row.id, row);
  const chapters = new Map(view.chapters.map((chapter) => [chapter.id, chapter]));
  for (const one of change.chapters) chapters.set(one.id, withChapterChange(chapters.get(one.id), one));
  return { ...view, ...change.rest, rows: [...rows.values()], chapters: [...chapters.values()] };
}
