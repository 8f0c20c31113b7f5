import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { findingLimit, findingName, findingValue } from '../words/finding-text.ts';
import { GRADE_WORDS } from '../words/grade-words.ts';
import { HAZARD_WORDS } from '../words/hazard-words.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { drawParts, MARGIN_LINE_ROW, placeOfRatio } from './margin-line.ts';
import { drawMark, outcomeClass } from './outcome-mark.ts';
import { type PortraitGroup, toPortrait } from './portrait-rows.ts';
import { SCALE_TICKS } from './scale.ts';
import { cutText } from './text-width.ts';

/**
 * The unit's portrait as one figure: every check's margin line in one column, so that the limits join into one thread and what is wrong
 * stands left of it. On a narrow page the value goes below the name, and the text keeps its size.
 */
export interface PortraitSize {
  readonly width: number;
}

export const PORTRAIT_WIDE: PortraitSize = { width: 720 };
export const PORTRAIT_NARROW: PortraitSize = { width: 360 };

const NARROW = 560;
const ROW = 34;
const HEAD = 22;
const FOOT = 8;
const MARK = 11;
const LINE_WIDTH = MARGIN_LINE_ROW.width;
const FIRST_LINE = 14;
const SECOND_LINE = 28;

export function drawPortrait(assessment: Assessment, { width }: PortraitSize): Markup {
  const groups = toPortrait(assessment);
  const narrow = width < NARROW;
  const lineX = narrow ? width - LINE_WIDTH - 2 : width - LINE_WIDTH - 230;
  let y = HEAD;
  const drawn: Markup[] = [];
  for (const group of groups) {
    drawn.push(drawHead(group, y, lineX));
    y += HEAD;
    for (const { finding } of group.rows) {
      drawn.push(drawRow(finding, y, { lineX, width, narrow }));
      y += ROW;
    }
    if (group.unread.length > 0) {
      drawn.push(drawUnread(group, y, { lineX, width, narrow }));
      y += ROW;
    }
  }
  const height = y + FOOT;
  const spoken = `Portrait: margin lines of ${groups.reduce((sum, { rows }) => sum + rows.length, 0)} checks, limit in the middle, good on the right`;
  const ticks = SCALE_TICKS.map(
    ([ratio, text]) =>
      html`<text class="ax${text === 'limit' ? ' strong' : ''}" x="${c(lineX + placeOfRatio(ratio, MARGIN_LINE_ROW))}" y="${FIRST_LINE}" text-anchor="middle">${text}</text>`,
  );
  return html`<svg class="ml fig portrait" width="${width}" height="${c(height)}" viewBox="0 0 ${width} ${c(height)}" role="img" aria-label="${spoken}">${joined(ticks)}${joined(drawn)}</svg>`;
}

function drawHead(group: PortraitGroup, y: number, lineX: number): Markup {
  const rest = group.notApplicable === 0 ? '' : `, ${group.notApplicable} not applicable`;
  return html`<g transform="translate(0 ${c(y)})"><text class="strong" x="0" y="${FIRST_LINE}">${HAZARD_WORDS[group.hazard]}${rest}</text><path class="thread" d="M${c(lineX + LINE_WIDTH / 2)} 0V${HEAD}"/></g>`;
}

interface Columns {
  readonly lineX: number;
  readonly width: number;
  readonly narrow: boolean;
}

function drawRow(finding: Finding, y: number, { lineX, width, narrow }: Columns): Markup {
  const TEXT = 18;
  const room = lineX - TEXT - FOOT;
  const grade = finding.limit === null ? '' : `, ${GRADE_WORDS[finding.limit.grade]}`;
  const limit = `${findingLimit(finding)}${grade}`;
  const value = findingValue(finding);
  const word = outcomeText(finding);
  const second = narrow ? `${value}${value === '' ? '' : ', '}${word}` : limit;
  const right = narrow
    ? NOTHING
    : html`<text x="${c(width)}" y="${FIRST_LINE}" text-anchor="end">${cutText(value, width - lineX - LINE_WIDTH)}</text><text class="word ${outcomeClass(finding.outcome)}" x="${c(width)}" y="${SECOND_LINE}" text-anchor="end">${cutText(word, width - lineX - LINE_WIDTH)}</text>`;
  return html`<g transform="translate(0 ${c(y)})">${drawMark(finding.outcome, MARK / 2, FIRST_LINE - MARK / 2 + 1, MARK)}<text class="name" x="${TEXT}" y="${FIRST_LINE}">${cutText(findingName(finding), room)}</text><text class="ax" x="${TEXT}" y="${SECOND_LINE}">${cutText(second, room)}</text>${right}<g transform="translate(${c(lineX)} 0)">${drawParts(finding, MARGIN_LINE_ROW)}</g></g>`;
}

function drawUnread(group: PortraitGroup, y: number, { lineX, width, narrow }: Columns): Markup {
  const TEXT = 18;
  return html`<g transform="translate(0 ${c(y)})">${drawMark('notAssessed', MARK / 2, FIRST_LINE - MARK / 2 + 1, MARK)}<text class="name" x="${TEXT}" y="${FIRST_LINE}">${group.unread.length} checks not assessed</text>${narrow ? NOTHING : html`<text class="word m-unassessed" x="${c(width)}" y="${FIRST_LINE}" text-anchor="end">not assessed</text>`}<g transform="translate(${c(lineX)} 0)">${drawParts(group.unread[0]!, MARGIN_LINE_ROW)}</g></g>`;
}
