import { BENCH_SET, type Chapter } from '../../core/check/bench-set.ts';
import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { drawOutcomeMark } from '../figure/outcome-mark.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { getCheckWords } from '../words/check-words.ts';
import { CHAPTER_WORDS, HAZARD_WORDS } from '../words/hazard-words.ts';
import { REASON_WORDS } from '../words/reason-words.ts';

const MARK = 11;

/** A check of the bench set that is not assessed, wholly or for some of its subjects. */
export interface Unexamined {
  readonly check: string;
  readonly chapter: Chapter;
  readonly hazard: keyof typeof HAZARD_WORDS;
  /** Why not, each reason once; empty when the Assessment does not mention the check. */
  readonly reasons: readonly string[];
  /** Subjects that are missing while others of the same check were assessed. */
  readonly subjects: readonly string[];
}

/** Everything the bench could have settled and did not, in the order of the bench set. */
export function listUnexamined(assessment: Assessment): readonly Unexamined[] {
  const byCheck = new Map<string, Finding[]>();
  for (const finding of assessment.findings) byCheck.set(finding.check, [...(byCheck.get(finding.check) ?? []), finding]);
  return BENCH_SET.flatMap(({ id, chapter, hazard }) => {
    const findings = byCheck.get(id) ?? [];
    const missing = findings.filter(({ outcome }) => outcome === 'notAssessed');
    if (findings.length > 0 && missing.length === 0) return [];
    const reasons = [...new Set(missing.map(({ reason }) => REASON_WORDS[reason]))];
    const partly = missing.length < findings.length;
    return [{ check: id, chapter, hazard, reasons, subjects: partly ? missing.flatMap(({ about }) => about ?? []) : [] }];
  });
}

export function setUnexamined(assessment: Assessment): Markup {
  const all = listUnexamined(assessment);
  if (all.length === 0) return html`<p class="txt">Every check of the bench set was assessed or does not apply.</p>`;
  const groups = [...new Set(all.map(toWhy))].map((why) =>
    setReason(
      why,
      all.filter((one) => toWhy(one) === why),
    ),
  );
  return html`<p class="txt gap">${all.length} of ${BENCH_SET.length} checks of the bench set were not assessed, or not for every place. A check that was not assessed is never a pass.</p><div class="unex">${joined(groups)}</div>`;
}

/** One reason, and under it chapter by chapter what it holds back. */
function setReason(why: string, here: readonly Unexamined[]): Markup {
  const chapters = Object.keys(CHAPTER_WORDS) as Chapter[];
  const lists = chapters.map((chapter) => {
    const own = here.filter((one) => one.chapter === chapter);
    if (own.length === 0) return NOTHING;
    const { title, bring } = CHAPTER_WORDS[chapter];
    const helps = why !== REASON_WORDS.notImplemented; // bringing evidence settles nothing that no check reads
    return html`<h4><b>${title}</b>${helps ? html`<span> · bring ${bring}</span>` : NOTHING}:</h4><ul>${joined(own.map(setOne))}</ul>`;
  });
  return html`<div class="chap"><h3>${why.charAt(0).toUpperCase()}${why.slice(1)}</h3>${joined(lists)}</div>`;
}

function toWhy({ reasons }: Unexamined): string {
  return reasons.length === 0 ? 'not assessed' : reasons.join('; ');
}

function setOne({ check, hazard, subjects }: Unexamined): Markup {
  const where = subjects.length === 0 ? '' : ` for ${subjects.join(', ')}`;
  return html`<li>${drawOutcomeMark('notAssessed', MARK)}${getCheckWords(check).title}${where} <i>(${HAZARD_WORDS[hazard].toLowerCase()})</i></li>`;
}
