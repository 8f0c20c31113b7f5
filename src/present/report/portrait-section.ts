import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { drawMarginLine, MARGIN_LINE_ROW, placeOfRatio } from '../figure/margin-line.ts';
import { drawOutcomeMark, outcomeClass } from '../figure/outcome-mark.ts';
import { type PortraitGroup, type PortraitRow, toPortrait } from '../figure/portrait-rows.ts';
import { toAnchor } from '../markup/anchor.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { getCheckWords } from '../words/check-words.ts';
import { findingLimit, isStruck } from '../words/finding-text.ts';
import { HOW_TO_READ } from '../words/fixed-sentences.ts';
import { GRADE_WORDS } from '../words/grade-words.ts';
import { HAZARD_WORDS } from '../words/hazard-words.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { setMeasured } from './quantity.ts';
import { linkToFinding } from './report-parts.ts';

const MARK = 11;
const HEAD_HEIGHT = 18;
const BASELINE = 13;

/** Rows as text with one margin line each, so that a page of any width can set them; the limits join into one thread. */
export function setPortrait(assessment: Assessment): Markup {
  const groups = toPortrait(assessment);
  if (groups.length === 0) return NOTHING;
  return html`${joined(groups.map((group, index) => setGroup(group, index === 0)))}<p class="small key">${HOW_TO_READ}</p>`;
}

function setGroup(group: PortraitGroup, first: boolean): Markup {
  const rest = group.notApplicable === 0 ? '' : ` (${group.notApplicable} not applicable)`;
  const unread = group.unread.length === 0 ? NOTHING : setUnread(group);
  return html`<div class="phead${first ? ' first' : ''}"><h3>${HAZARD_WORDS[group.hazard]}${rest}</h3><span class="ln">${first ? drawTicks() : NOTHING}</span><span class="vl"></span><span class="wd"></span></div>
<ul>${joined(group.rows.map(setRow))}${unread}</ul>`;
}

function drawTicks(): Markup {
  const ticks = [[4, '×¼'] as const, [2, '×½'] as const, [1, 'limit'] as const, [0.5, '×2'] as const, [0.25, '×4'] as const];
  const texts = ticks.map(
    ([ratio, text]) =>
      html`<text class="ax${ratio === 1 ? ' strong' : ''}" x="${c(placeOfRatio(ratio, MARGIN_LINE_ROW))}" y="${BASELINE}" text-anchor="middle">${text}</text>`,
  );
  return html`<svg width="${MARGIN_LINE_ROW.width}" height="${HEAD_HEIGHT}" viewBox="0 0 ${MARGIN_LINE_ROW.width} ${HEAD_HEIGHT}" aria-hidden="true">${joined(texts)}</svg>`;
}

function setRow({ finding, others }: PortraitRow): Markup {
  const { title } = getCheckWords(finding.check);
  const isRead = finding.outcome !== 'notAssessed';
  const more = others === 0 ? '' : `, worst of ${others + 1}`;
  const limit = finding.limit === null ? '' : `${findingLimit(finding)}, ${GRADE_WORDS[finding.limit.grade]}`;
  const about = [`${finding.about ?? ''}${more}`.replace(/^, /, ''), limit].filter((part) => part !== '');
  return html`<li class="prow"><span class="ms">${drawOutcomeMark(finding.outcome, MARK)}</span><span class="nm"><b>${isRead ? linkToFinding(finding, title) : title}</b>${joined(about.map((part) => html`<span>${part}</span>`))}</span><span class="ln">${drawMarginLine(finding, MARGIN_LINE_ROW)}</span><span class="vl">${setValue(finding)}</span><span class="wd ${wordClass(finding)}">${outcomeText(finding)}</span></li>\n`;
}

function setUnread({ unread }: PortraitGroup): Markup {
  const first = unread[0];
  if (first === undefined) return NOTHING;
  return html`<li class="prow"><span class="ms">${drawOutcomeMark('notAssessed', MARK)}</span><span class="nm"><b>${unread.length} checks not assessed</b><span>named under <a class="from" href="#${toAnchor('part', 'unexamined')}">What was not examined</a></span></span><span class="ln">${drawMarginLine({ ...first, limit: null }, MARGIN_LINE_ROW)}</span><span class="vl"></span><span class="wd unassessed">not assessed</span></li>\n`;
}

function setValue(finding: Finding): Markup {
  if (finding.measured === null) return NOTHING;
  const set = setMeasured(finding.measured, finding.show);
  return isStruck(finding) ? html`<s class="refused">${set}</s>` : set;
}

/** Class of a word beside a mark: the mark's class without its prefix. */
export function wordClass(finding: Finding): string {
  return outcomeClass(finding.outcome).replace(/^m-/, '');
}
