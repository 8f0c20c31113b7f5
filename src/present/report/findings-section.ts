import { type Assessment, type Finding, HAZARDS, type Limit } from '../../core/result/assessment.ts';
import { sourcePlace, stepsOf } from '../derivation/source-text.ts';
import { drawMarginLine, MARGIN_LINE_FINDING } from '../figure/margin-line.ts';
import { drawOutcomeMark } from '../figure/outcome-mark.ts';
import { toAnchor } from '../markup/anchor.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { STATE_WORDS } from '../words/case-words.ts';
import { getCheckWords } from '../words/check-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { decisionText, findingName, isStruck } from '../words/finding-text.ts';
import { CONSEQUENCE_WORDS, HAZARD_WORDS } from '../words/hazard-words.ts';
import { namedLimitText } from '../words/limit-words.ts';
import { NOTES } from '../words/notes.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { wordClass } from './portrait-section.ts';
import { setGrade, setMeasured } from './quantity.ts';
import { fieldWords, linkToStep, type ReportExtras } from './report-parts.ts';

const MARK = 16;

/** Every finding that says something, by hazard. What was not assessed and left no reading has its own section. */
export function setFindings(assessment: Assessment, extras: ReportExtras): Markup {
  const groups = HAZARDS.map((hazard) => {
    const telling = assessment.findings.filter((finding) => finding.hazard === hazard && isTelling(finding));
    const quiet = assessment.findings.filter((finding) => finding.hazard === hazard && finding.outcome === 'notApplicable');
    const rest = quiet.length === 0 ? NOTHING : html`<p class="small">Not applicable: ${quiet.map(findingName).join('; ')}.</p>`;
    if (telling.length === 0 && quiet.length === 0) return NOTHING;
    return html`<h3 class="hz">${HAZARD_WORDS[hazard]}</h3>${joined(telling.map((finding) => setFinding(finding, assessment, extras)))}${rest}`;
  });
  return joined(groups);
}

export function isTelling(finding: Finding): boolean {
  return finding.outcome !== 'notApplicable' && (finding.outcome !== 'notAssessed' || finding.measured !== null);
}

function setFinding(finding: Finding, assessment: Assessment, extras: ReportExtras): Markup {
  const { question } = getCheckWords(finding.check);
  const line = html`<div>${drawMarginLine(finding, MARGIN_LINE_FINDING)}</div>`;
  const remarks = finding.notes.map(({ key, args }) => html`<li>${sentenceFor(NOTES, key, args)}</li>`);
  const doubt =
    finding.headline || finding.outcome !== 'fail' || finding.margin === null
      ? NOTHING
      : html`<li>Exceeds a limit that was not verified by less than 1.3 times, so it does not set the verdict.</li>`;
  const list = remarks.length === 0 && doubt === NOTHING ? NOTHING : html`<ul class="remarks">${joined(remarks)}${doubt}</ul>`;
  return html`<article class="find" id="${toAnchor('finding', finding.id)}" tabindex="-1"><div class="top">${drawOutcomeMark(finding.outcome, MARK)}<h3>${findingName(finding)}</h3><span class="wd ${wordClass(finding)}">${outcomeText(finding)}</span></div>
<p class="ask">${question}</p>
<div class="body">${line}<dl class="kv">${setMeasuredRow(finding)}${finding.limit === null ? NOTHING : setLimitRow('limit', finding.limit, finding, true)}</dl></div>
<div class="rest"><dl class="kv"><dt>decision</dt><dd>${decisionText(finding)}${finding.outcome === 'fail' ? ` ${CONSEQUENCE_WORDS[finding.consequence]}` : ''}</dd>${joined(finding.others.map((other) => setLimitRow('also shown', other, finding, finding.limit === null || sourcePlace(finding.limit.source) !== sourcePlace(other.source))))}${setOrigins(finding, assessment)}${setFields(finding, extras)}</dl>${list}</div></article>\n`;
}

function setMeasuredRow(finding: Finding): Markup {
  if (finding.measured === null) return NOTHING;
  const value = setMeasured(finding.measured, finding.show);
  const state = finding.state === undefined ? '' : `, ${STATE_WORDS[finding.state]}`;
  const set = isStruck(finding) ? html`<s class="refused">${value}</s>` : html`<span class="strong">${value}</span>`;
  const unknown =
    'value' in finding.measured && finding.measured.u === null && finding.measured.side === undefined ? ', uncertainty not known' : '';
  return html`<dt>found</dt><dd>${set}${state}${unknown}</dd>`;
}

function setLimitRow(title: string, limit: Limit, finding: Finding, placed: boolean): Markup {
  const place = placed ? html`<br><span class="small">${sourcePlace(limit.source)}</span>` : ', same place';
  return html`<dt>${title}</dt><dd>${namedLimitText(limit, finding.show)} ${setGrade(limit.grade)}${place}</dd>`;
}

function setOrigins(finding: Finding, assessment: Assessment): Markup {
  const links = stepsOf(finding).filter(({ step }) => assessment.steps.some(({ id }) => id === step));
  return links.length === 0
    ? NOTHING
    : html`<dt>worked out</dt><dd>${joined(
        links.map(({ words, step }) => linkToStep(step, words)),
        ', ',
      )}</dd>`;
}

function setFields({ fields }: Finding, extras: ReportExtras): Markup {
  return fields.length === 0 ? NOTHING : html`<dt>evidence</dt><dd>${fields.map((field) => fieldWords(field, extras)).join('; ')}</dd>`;
}
