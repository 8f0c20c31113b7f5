import type { Chapter } from '../../core/check/bench-set.ts';
import type { Assessment, Finding, Outcome } from '../../core/result/assessment.ts';
import { drawOutcomeMark } from '../figure/outcome-mark.ts';
import { drawPortTable } from '../figure/port-table.ts';
import { html, NOTHING } from '../markup/markup.ts';
import { chapterOf, isTelling } from '../report/chapter.ts';
import { listFigures } from '../report/chapter-picture.ts';
import type { FigurePart } from '../report/figure-part.ts';
import { setMeasured } from '../report/quantity.ts';
import { barrierFigure } from '../report/transformer-picture.ts';
import { findingName } from '../words/finding-text.ts';
import { CHAPTER_WORDS } from '../words/hazard-words.ts';
import { OUTCOME_WORDS } from '../words/outcome-words.ts';
import { type BarrierView, toBarrierView } from './barrier-view.ts';
import { textOnce } from './finding-texts.ts';
import { type TransformerView, toTransformerViews } from './transformer-view.ts';
import type { Drawn } from './workspace-view.ts';

/** A chapter of the workspace gathers the checks of one or two chapters of the examination. */
export const WORKSPACE_CHAPTERS = [
  { id: 'label', of: ['label'], kinds: ['label', 'body'] },
  { id: 'touch', of: ['cold', 'touch'], kinds: ['cold', 'touch'] },
  { id: 'load', of: ['load'], kinds: ['advertised', 'sweep', 'event', 'ripple', 'earthSwing'] },
  { id: 'heat', of: ['heat'], kinds: ['spots', 'soak', 'thermalPicture'] },
  { id: 'board', of: ['board'], kinds: ['board', 'residual', 'distance'] },
  { id: 'transformer', of: ['transformer', 'scope'], kinds: ['stack', 'workingVoltage', 'capture'] },
  { id: 'circuit', of: ['circuit'], kinds: [] },
  { id: 'faults', of: ['faults'], kinds: [] },
] as const satisfies readonly { id: string; of: readonly Chapter[]; kinds: readonly string[] }[];
export type WorkspaceChapter = (typeof WORKSPACE_CHAPTERS)[number]['id'];

export interface ChapterView {
  readonly id: WorkspaceChapter;
  readonly title: string;
  readonly bring: string;
  /** The worst that its findings came to. */
  readonly outcome: Outcome;
  readonly word: string;
  readonly markSvg: string;
  readonly exhibits: number;
  readonly findings: readonly string[];
  readonly figures: readonly {
    readonly wideSvg: string;
    readonly narrowSvg: string;
    readonly title: string;
    readonly captionHtml: string;
  }[];
  readonly tableHtml: string;
  /** Transformers beside their entry, and the barrier map as sentences that lead to what decides it. */
  readonly transformers: readonly TransformerView[];
  readonly barrier: BarrierView | null;
  /** Worked numbers under the picture. */
  readonly works: readonly { readonly label: string; readonly valueHtml: string; readonly step: string }[];
}

const MARK = 11;
const MOST_WORKS = 12;
const WORST_FIRST: readonly Outcome[] = ['fail', 'inconclusive', 'pass', 'notAssessed', 'notApplicable'];
const TITLES: Readonly<Partial<Record<WorkspaceChapter, string>>> = {
  touch: 'Cold and touch',
  transformer: 'Transformer and scope',
  circuit: 'Circuit',
  faults: 'Simulated',
};

export function toChapterViews(assessment: Assessment, before?: Drawn): readonly ChapterView[] {
  return WORKSPACE_CHAPTERS.map((chapter) => {
    const old = before?.view.chapters.find(({ id }) => id === chapter.id);
    const same = old !== undefined && before !== undefined && isDrawnAlike(chapter, before.assessment, assessment);
    return same ? old : toChapterView(chapter, assessment);
  });
}

type Chapters = (typeof WORKSPACE_CHAPTERS)[number];

/** Whether everything a chapter is drawn of says the same as before. */
function isDrawnAlike({ id, of, kinds }: Chapters, before: Assessment, now: Assessment): boolean {
  const chapters: readonly Chapter[] = of;
  const findingsOf = ({ findings }: Assessment): Finding[] => findings.filter(({ check }) => chapters.includes(chapterOf(check)));
  const exhibitsOf = ({ bench }: Assessment): number =>
    bench.exhibits.filter(({ kind }) => (kinds as readonly string[]).includes(kind)).length;
  const [old, own] = [findingsOf(before), findingsOf(now)];
  return (
    old.length === own.length &&
    own.every((finding, index) => finding === old[index] || textOnce(finding) === textOnce(old[index] as Finding)) &&
    exhibitsOf(before) === exhibitsOf(now) &&
    sameTexts(drawnOf(id, before), drawnOf(id, now))
  );
}

/** What a chapter draws beside its findings. */
function drawnOf(id: WorkspaceChapter, { curves, soaks, circuit, transformers, barrier }: Assessment): readonly string[] {
  switch (id) {
    case 'load':
      return [textOnce(curves)];
    case 'heat':
      return soaks.map(textOnce);
    case 'circuit':
      return [String(circuit !== undefined), textOnce(circuit?.spreads)];
    case 'transformer':
      return [textOnce(transformers), textOnce(barrier)];
    case 'board':
      return [textOnce(barrier)];
    default:
      return [];
  }
}

function sameTexts(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((text, index) => text === other[index]);
}

function toChapterView({ id, of, kinds }: Chapters, assessment: Assessment): ChapterView {
  const chapters: readonly Chapter[] = of;
  const findings = assessment.findings.filter(({ check }) => chapters.includes(chapterOf(check)));
  const outcome = WORST_FIRST.find((one) => findings.some((finding) => finding.outcome === one)) ?? 'notApplicable';
  const table = id === 'load' && assessment.curves.length > 0 ? drawPortTable(assessment) : NOTHING;
  return {
    id,
    title: TITLES[id] ?? CHAPTER_WORDS[of[0]].title,
    bring: chapters.map((chapter) => CHAPTER_WORDS[chapter].bring).join('; '),
    outcome,
    word: OUTCOME_WORDS[outcome],
    markSvg: drawOutcomeMark(outcome, MARK).markup,
    exhibits:
      assessment.bench.exhibits.filter(({ kind }) => (kinds as readonly string[]).includes(kind)).length +
      (id === 'circuit' && assessment.circuit !== undefined ? 1 : 0) +
      (id === 'faults' && findings.some((finding) => finding.subject !== null) ? 1 : 0),
    findings: findings.map((finding) => finding.id),
    figures: figuresOf(id, chapters, assessment)
      .filter(({ wide }) => wide.markup !== '')
      .map(({ wide, narrow, title, caption }) => ({
        wideSvg: wide.markup,
        narrowSvg: narrow.markup,
        title,
        captionHtml: html`${caption}`.markup,
      })),
    tableHtml: table.markup,
    transformers: id === 'transformer' ? toTransformerViews(assessment) : [],
    barrier: id === 'transformer' || id === 'board' ? toBarrierView(assessment) : null,
    works: toWorks(findings),
  };
}

/** The cross-section stands beside its entry; the map of the barrier beside the distances that it is made of, too. */
function figuresOf(id: WorkspaceChapter, chapters: readonly Chapter[], assessment: Assessment): readonly FigurePart[] {
  if (id === 'transformer') return [barrierFigure(assessment)];
  const figures = chapters.flatMap((chapter) => listFigures(chapter, assessment));
  return id === 'board' ? [...figures, barrierFigure(assessment)] : figures;
}

function toWorks(findings: readonly Finding[]): ChapterView['works'] {
  return findings
    .filter((finding) => isTelling(finding) && finding.step !== null && finding.measured !== null && 'value' in finding.measured)
    .sort((a, b) => WORST_FIRST.indexOf(a.outcome) - WORST_FIRST.indexOf(b.outcome))
    .slice(0, MOST_WORKS)
    .map((finding) => ({
      label: findingName(finding),
      valueHtml: finding.measured === null ? '' : setMeasured(finding.measured, finding.show).markup,
      step: finding.step ?? '',
    }));
}
