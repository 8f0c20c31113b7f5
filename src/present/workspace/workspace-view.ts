import type { Assessment, Outcome } from '../../core/result/assessment.ts';
import { drawOutcomeMark } from '../figure/outcome-mark.ts';
import { countOutcomes, toPortrait } from '../figure/portrait-rows.ts';
import { drawVerdictHalves, getFailureHalf } from '../figure/verdict-halves.ts';
import { joined } from '../markup/markup.ts';
import { listVerdictLines } from '../report/verdict-section.ts';
import { coverageHeadline } from '../words/failure-words.ts';
import { fieldText } from '../words/field-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { HAZARD_WORDS } from '../words/hazard-words.ts';
import { laboratoryText } from '../words/laboratory-words.ts';
import { NOTES } from '../words/notes.ts';
import { OUTCOME_WORDS } from '../words/outcome-words.ts';
import { type ChapterView, toChapterViews } from './chapter-view.ts';
import { type FindingRow, toFindingRows } from './finding-row.ts';
import { type LastChance, type NextView, toLastChances, toNextViews } from './next-view.ts';

/**
 * Everything the page of a case draws, worked out already: texts, finished markup and the order of things. The page compares no number
 * with a limit and finds no word of its own for an outcome.
 */
export interface WorkspaceView {
  readonly verdict: {
    readonly halvesHtml: string;
    readonly whyHtml: string;
    /** Both words as one sentence, spoken when they change. */
    readonly spoken: string;
    readonly failure: string;
    readonly coverage: string;
  };
  readonly tally: readonly { readonly outcome: Outcome; readonly word: string; readonly count: number; readonly markSvg: string }[];
  /** Findings by id, every one; what stands where is in `groups`. */
  readonly rows: readonly FindingRow[];
  readonly groups: readonly HazardGroup[];
  readonly chapters: readonly ChapterView[];
  readonly next: readonly NextView[];
  readonly lastChance: readonly LastChance[];
  readonly laboratory: string;
  readonly warnings: readonly { readonly at: string; readonly where: string; readonly words: string }[];
  readonly points: { readonly opened: boolean; readonly desoldered: boolean; readonly unwound: boolean };
}

/** The verdict column under one hazard: the worst finding of each check first, the others of it behind. */
export interface HazardGroup {
  readonly hazard: string;
  readonly title: string;
  readonly checks: readonly { readonly lead: string; readonly others: readonly string[] }[];
  readonly notApplicable: number;
}

const MARK = 11;

export function toWorkspaceView(assessment: Assessment): WorkspaceView {
  const left = getFailureHalf(assessment);
  const { words: coverage } = coverageHeadline(assessment.verdict.coverage);
  const after = (what: string): boolean => assessment.bench.events.some((event) => event.what === what);
  return {
    verdict: {
      halvesHtml: drawVerdictHalves(assessment).markup,
      whyHtml: joined(listVerdictLines(assessment), ' ').markup,
      spoken: `Worst failure: ${left.word}. Coverage: ${coverage}.`,
      failure: left.word,
      coverage,
    },
    tally: [...countOutcomes(assessment)].map(([outcome, count]) => ({
      outcome,
      word: OUTCOME_WORDS[outcome],
      count,
      markSvg: drawOutcomeMark(outcome, MARK).markup,
    })),
    rows: toFindingRows(assessment),
    groups: toGroups(assessment),
    chapters: toChapterViews(assessment),
    next: toNextViews(assessment),
    lastChance: toLastChances(assessment),
    laboratory: laboratoryText(assessment.laboratory),
    warnings: assessment.warnings.map(({ key, at, args }) => ({ at, where: fieldText(at), words: sentenceFor(NOTES, key, args) })),
    points: { opened: after('opened'), desoldered: after('desoldered'), unwound: after('unwound') },
  };
}

function toGroups(assessment: Assessment): HazardGroup[] {
  return toPortrait(assessment).map(({ hazard, rows, unread, notApplicable }) => ({
    hazard,
    title: HAZARD_WORDS[hazard],
    checks: [...rows.map(({ finding }) => finding), ...unread].map((lead) => ({
      lead: lead.id,
      others: assessment.findings.filter(({ check, id }) => check === lead.check && id !== lead.id).map(({ id }) => id),
    })),
    notApplicable,
  }));
}

/** What of a view became different: rows by id, the rest whole. A member that is missing stayed as it was. */
export interface ViewChange {
  readonly rows: readonly FindingRow[];
  readonly gone: readonly string[];
  readonly chapters: readonly ChapterView[];
  readonly rest: Partial<Omit<WorkspaceView, 'rows' | 'chapters'>>;
}

const WHOLE = ['verdict', 'tally', 'groups', 'next', 'lastChance', 'laboratory', 'warnings', 'points'] as const;

export function toViewChange(before: WorkspaceView, after: WorkspaceView): ViewChange {
  const rest: Record<string, unknown> = {};
  for (const key of WHOLE) if (JSON.stringify(before[key]) !== JSON.stringify(after[key])) rest[key] = after[key];
  const ids = new Set(after.rows.map(({ id }) => id));
  return {
    rows: changed(before.rows, after.rows),
    gone: before.rows.map(({ id }) => id).filter((id) => !ids.has(id)),
    chapters: changed(before.chapters, after.chapters),
    rest: rest as ViewChange['rest'],
  };
}

function changed<T extends { readonly id: string }>(before: readonly T[], after: readonly T[]): T[] {
  const old = new Map(before.map((one) => [one.id, JSON.stringify(one)]));
  return after.filter((one) => old.get(one.id) !== JSON.stringify(one));
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
