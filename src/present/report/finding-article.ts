import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { drawMarginLine, MARGIN_LINE_FINDING } from '../figure/margin-line.ts';
import { drawOutcomeMark } from '../figure/outcome-mark.ts';
import { toAnchor } from '../markup/anchor.ts';
import { html, joined, type Markup, NOTHING, type Piece } from '../markup/markup.ts';
import { getCheckWords } from '../words/check-words.ts';
import { findingName } from '../words/finding-text.ts';
import { outcomeText } from '../words/outcome-words.ts';
import {
  conditionWords,
  decisionWords,
  evidenceWords,
  setFound,
  setLimit,
  setOrigins,
  setOthers,
  setPlace,
  setRemarks,
} from './finding-parts.ts';
import { wordClass } from './portrait-section.ts';
import type { ReportExtras } from './report-parts.ts';

const MARK = 15;

/** A finding that stands alone: question, reading against limit, decision, conditions, other editions, origin and evidence. */
export function setFinding(finding: Finding, assessment: Assessment, extras: ReportExtras): Markup {
  const limit = finding.limit === null ? NOTHING : setLimit(finding.limit, finding);
  const place = finding.limit === null ? NOTHING : setPlace(finding.limit);
  const origins = setOrigins(finding, assessment);
  return html`<article class="find" id="${toAnchor('finding', finding.id)}" tabindex="-1"><div class="top">${drawOutcomeMark(finding.outcome, MARK)}<h3>${findingName(finding)}</h3><span class="wd ${wordClass(finding)}">${outcomeText(finding)}</span></div>
<p class="ask">${getCheckWords(finding.check).question}</p>
<div class="body"><div>${drawMarginLine(finding, MARGIN_LINE_FINDING)}</div><dl class="kv">${row('found', setFound(finding))}${row('limit', limit)}</dl></div>
<div class="rest"><dl class="kv">${row('limit from', place)}${row('decision', decisionWords(finding))}${row('read under', conditionWords(finding))}${joined(setOthers(finding).map((other) => row('also shown', other)))}${row('worked out', origins)}${row('evidence', evidenceWords(finding, extras))}</dl>${setRemarks(finding)}</div></article>\n`;
}

function row(title: string, piece: Piece): Markup {
  const set = html`${piece}`;
  return set.markup === '' ? NOTHING : html`<dt>${title}</dt><dd>${set}</dd>`;
}
