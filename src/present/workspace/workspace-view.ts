import type { Assessment, Finding, Outcome } from '../../core/result/assessment.ts';
import { drawOutcomeMark } from '../figure/outcome-mark.ts';
import { countOutcomes, toPortrait } from '../figure/portrait-rows.ts';
import { drawVerdictHalves, getFailureHalf } from '../figure/verdict-halves.ts';
import { joined } from '../markup/markup.ts';
import { listVerdictLines } from '../report/verdict-section.ts';
import { energyText, residualText } from '../words/energy-words.ts';
import { coverageHeadline } from '../words/failure-words.ts';
import { fieldText } from '../words/field-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { CAUTIONS } from '../words/fixed-sentences.ts';
import { HAZARD_WORDS } from '../words/hazard-words.ts';
import { laboratoryText } from '../words/laboratory-words.ts';
import { WARNINGS } from '../words/notes.ts';
import { OUTCOME_WORDS } from '../words/outcome-words.ts';
import { type ChapterView, toChapterViews } from './chapter-view.ts';
import { type FindingRow, toFindingRow } from './finding-row.ts';
import { findingTexts } from './finding-texts.ts';
import { type LastChance, type NextView, toLastChances, toNextViews } from './next-view.ts';
import { type PictureView, toPictureView } from './picture-view.ts';
import { type SoakView, toSoakViews } from './soak-view.ts';

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
  readonly caution: {
    readonly energy: string;
    /** What was measured on the capacitors, with the step each comes from. */
    readonly left: readonly { readonly text: string; readonly step: string }[];
    readonly sentences: readonly string[];
  };
  /** Rows that a sweep took from a file, as they were judged, by exhibit. */
  readonly taken: readonly { readonly exhibit: string; readonly rows: readonly (readonly string[])[] }[];
  readonly warnings: readonly { readonly at: string; readonly where: string; readonly words: string }[];
  /** Soaks that were followed to their end, and those of which the kept result is older than their log. */
  readonly soaks: readonly SoakView[];
  /** Thermal pictures with what was read in each region. */
  readonly pictures: readonly PictureView[];
  readonly points: { readonly opened: boolean; readonly desoldered: boolean; readonly unwound: boolean };
}

/** The worst finding of one check, and its others. */
export interface GroupedCheck {
  readonly lead: string;
  readonly others: readonly string[];
}

/** The verdict column under one hazard: the worst finding of each check first, the others of it behind. */
export interface HazardGroup {
  readonly hazard: string;
  readonly title: string;
  readonly checks: readonly GroupedCheck[];
  /** Checks of this hazard that nothing was read for. */
  readonly unread: readonly GroupedCheck[];
  readonly notApplicable: number;
}

const MARK = 11;
const DIGITS = 5; // as many as a bench meter shows

/** What was drawn before: rows and chapters that say the same are taken over as they are, so that a key costs what it moves. */
export interface Drawn {
  readonly assessment: Assessment;
  readonly view: WorkspaceView;
}

export function toWorkspaceView(assessment: Assessment, before?: Drawn): WorkspaceView {
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
    rows: reuseRows(assessment, before),
    groups: toGroups(assessment),
    chapters: toChapterViews(assessment, before),
    next: toNextViews(assessment),
    lastChance: toLastChances(assessment),
    laboratory: laboratoryText(assessment.laboratory),
    caution: {
      energy: energyText(assessment),
      left: (assessment.residuals ?? []).map((one) => ({ text: residualText(one), step: one.first.step })),
      sentences: CAUTIONS,
    },
    taken: assessment.curves.map(({ exhibit, points }) => ({ exhibit, rows: points.map(toTexts) })),
    warnings: assessment.warnings.map(({ key, at, args }) => ({ at, where: fieldText(at), words: sentenceFor(WARNINGS, key, args) })),
    soaks: toSoakViews(assessment),
    pictures: (assessment.pictures ?? []).map(toPictureView),
    points: { opened: after('opened'), desoldered: after('desoldered'), unwound: after('unwound') },
  };
}

function reuseRows(assessment: Assessment, before?: Drawn): readonly FindingRow[] {
  if (before === undefined) return assessment.findings.map(toFindingRow);
  const old = findingTexts(before.assessment);
  const now = findingTexts(assessment);
  const rows = new Map(before.view.rows.map((row) => [row.id, row]));
  return assessment.findings.map((finding) => {
    const row = old.get(finding.id) === now.get(finding.id) ? rows.get(finding.id) : undefined;
    return row ?? toFindingRow(finding);
  });
}

function toTexts({ i, v, pin }: Assessment['curves'][number]['points'][number]): string[] {
  return [i, v, pin].map((value) => (value === null ? '' : Number(value.toPrecision(DIGITS)).toString()));
}

function toGroups(assessment: Assessment): HazardGroup[] {
  const grouped = (lead: Finding): GroupedCheck => ({
    lead: lead.id,
    others: assessment.findings.filter(({ check, id }) => check === lead.check && id !== lead.id).map(({ id }) => id),
  });
  return toPortrait(assessment).map(({ hazard, rows, unread, notApplicable }) => {
    const told = rows.filter(({ finding, partly }) => finding.outcome !== 'notAssessed' || partly || finding.measured !== null);
    return {
      hazard,
      title: HAZARD_WORDS[hazard],
      checks: told.map(({ finding }) => grouped(finding)),
      unread: [...rows.filter((row) => !told.includes(row)).map(({ finding }) => finding), ...unread].map(grouped),
      notApplicable,
    };
  });
}
