import type { Assessment, Finding, Limit } from '../../core/result/assessment.ts';
import { sourcePlace, stepsOf } from '../derivation/source-text.ts';
import { stepNumber } from '../derivation/step-number.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { STATE_WORDS } from '../words/case-words.ts';
import { underText } from '../words/condition-words.ts';
import { evidenceText } from '../words/evidence-text.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { decisionText, isStruck } from '../words/finding-text.ts';
import { CONSEQUENCE_WORDS } from '../words/hazard-words.ts';
import { namedLimitText } from '../words/limit-words.ts';
import { NOTES } from '../words/notes.ts';
import { riseText } from '../words/rise-text.ts';
import { needsConditions } from './chapter.ts';
import { setGrade, setMeasured } from './quantity.ts';
import { fieldWords, linkToStep, type ReportExtras } from './report-parts.ts';

/** The pieces a finding is set from, alone or in a row of its kind. */
export function setFound(finding: Finding): Markup {
  if (finding.measured === null) return NOTHING;
  const value = setMeasured(finding.measured, finding.show);
  const state = finding.state === undefined ? '' : `, ${STATE_WORDS[finding.state]}`;
  const set = isStruck(finding) ? html`<s class="refused">${value}</s>` : html`<span class="strong">${value}</span>`;
  const unknown =
    'value' in finding.measured && finding.measured.u === null && finding.measured.side === undefined ? ', uncertainty not known' : '';
  return html`${set}${state}${unknown}`;
}

export function setLimit(limit: Limit, finding: Finding): Markup {
  const rise = limit === finding.limit ? riseText(finding) : '';
  return html`${namedLimitText(limit, finding.show)} ${setGrade(limit.grade)}${rise === '' ? NOTHING : `, ${rise}`}`;
}

export function setPlace(limit: Limit): Markup {
  return html`<span class="small">${sourcePlace(limit.source)}</span>`;
}

/** Limits of other editions and standards; the place only where it is another one. */
export function setOthers({ limit, others, show }: Finding): readonly Markup[] {
  let place = limit === null ? '' : sourcePlace(limit.source);
  return others.map((other) => {
    const same = sourcePlace(other.source) === place;
    place = sourcePlace(other.source);
    return html`${namedLimitText(other, show)} ${setGrade(other.grade)}${same ? ', same place' : html`, ${setPlace(other)}`}`;
  });
}

export function decisionWords(finding: Finding): string {
  return `${decisionText(finding)}${finding.outcome === 'fail' ? ` ${CONSEQUENCE_WORDS[finding.consequence]}` : ''}`;
}

/** Conditions under which it was read, where they matter. */
export function conditionWords(finding: Finding): string {
  return needsConditions(finding.check) ? underText(finding.under) : '';
}

export function setOrigins(finding: Finding, assessment: Assessment): Markup {
  const links = stepsOf(finding).flatMap(({ words, step }) => {
    const number = stepNumber(assessment, step);
    return number === null ? [] : [linkToStep(step, `${words}, step ${number}`)];
  });
  return joined(links, '; ');
}

export function evidenceWords({ fields }: Finding, extras: ReportExtras): string {
  return evidenceText(fields, (field) => fieldWords(field, extras));
}

export function remarksOf({ notes }: Finding): readonly string[] {
  return notes.map(({ key, args }) => sentenceFor(NOTES, key, args));
}

/** Remarks, and why a failure by less than 1.3 times on an unverified limit sets no headline. */
export function setRemarks(finding: Finding, saidAlready: ReadonlySet<string> = new Set()): Markup {
  const remarks = remarksOf(finding).flatMap((remark) => (saidAlready.has(remark) ? [] : [html`<li>${remark}</li>`]));
  const isDoubtful = !finding.headline && finding.outcome === 'fail' && finding.margin !== null;
  const doubt = isDoubtful
    ? html`<li>Exceeds a limit that was not verified by less than 1.3 times, so it does not set the verdict.</li>`
    : NOTHING;
  return remarks.length === 0 && !isDoubtful ? NOTHING : html`<ul class="remarks">${joined(remarks)}${doubt}</ul>`;
}
