import type { Finding } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup } from '../markup/markup.ts';
import { drawParts, MARGIN_LINE_ROW, placeOfRatio } from './margin-line.ts';
import { drawMark, outcomeClass } from './outcome-mark.ts';
import { cutText } from './text-width.ts';

/** One row of a list of findings of one kind, in words; the margin line is drawn from the finding. */
export interface JudgedRow {
  readonly finding: Finding;
  readonly name: string;
  /** Under the name: the limit, and how the value is to be taken. */
  readonly detail: readonly string[];
  readonly value: string;
  readonly word: string;
}

export interface ListSize {
  readonly width: number;
}

export const LIST_WIDE: ListSize = { width: 680 };
export const LIST_NARROW: ListSize = { width: 340 };

const NARROW = 560;
const HEAD = 20;
const TEXT = 18; // where text begins, right of the mark
const MARK = 11;
const FIRST_LINE = 14;
const LINE = 15;
const GAP = 8;
const LINE_WIDTH = MARGIN_LINE_ROW.width;
const WORD_WIDTH = 190;
const TICKS = [
  [4, '×¼'],
  [2, '×½'],
  [1, 'limit'],
  [0.5, '×2'],
  [0.25, '×4'],
] as const;

/** Margin lines of one kind in one column, worst ratio first, so that the limits join into one thread. */
export function drawJudgedList(rows: readonly JudgedRow[], { width }: ListSize, spoken: string): Markup {
  const narrow = width < NARROW;
  const lineX = narrow ? width - LINE_WIDTH - 2 : width - LINE_WIDTH - WORD_WIDTH;
  const ticks = TICKS.map(
    ([ratio, text]) =>
      html`<text class="ax${text === 'limit' ? ' strong' : ''}" x="${c(lineX + placeOfRatio(ratio, MARGIN_LINE_ROW))}" y="${FIRST_LINE}" text-anchor="middle">${text}</text>`,
  );
  let y = HEAD;
  const drawn = rows.map((row) => {
    const height = heightOf(row, narrow);
    const set = drawRow(row, { y, height, lineX, width, narrow });
    y += height;
    return set;
  });
  return html`<svg class="ml fig list" width="${width}" height="${c(y)}" viewBox="0 0 ${width} ${c(y)}" role="img" aria-label="${spoken}">${joined(ticks)}${joined(drawn)}</svg>`;
}

/** Worst ratio first; what has no ratio is worse than any when it fails, and comes last when it says nothing. */
export function worstFirst(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort((a, b) => rankOf(b) - rankOf(a) || (a.id < b.id ? -1 : 1));
}

function rankOf({ margin, outcome }: Finding): number {
  if (outcome === 'notAssessed' || outcome === 'notApplicable') return Number.NEGATIVE_INFINITY;
  return margin ?? (outcome === 'fail' ? Number.POSITIVE_INFINITY : 0);
}

function heightOf({ detail }: JudgedRow, narrow: boolean): number {
  const lines = 1 + detail.length + (narrow ? 1 : 0);
  return Math.max(MARGIN_LINE_ROW.height, lines * LINE + GAP);
}

interface Place {
  readonly y: number;
  readonly height: number;
  readonly lineX: number;
  readonly width: number;
  readonly narrow: boolean;
}

function drawRow({ finding, name, detail, value, word }: JudgedRow, { y, height, lineX, width, narrow }: Place): Markup {
  const room = lineX - TEXT - GAP;
  const kind = outcomeClass(finding.outcome);
  const details = detail.map(
    (text, index) => html`<text class="ax" x="${TEXT}" y="${FIRST_LINE + LINE * (index + 1)}">${cutText(text, room)}</text>`,
  );
  const below = FIRST_LINE + LINE * (detail.length + 1);
  const side = width - lineX - LINE_WIDTH - GAP;
  const told = narrow
    ? html`<text x="${TEXT}" y="${below}">${cutText(value, room)}</text><text class="word ${kind}" x="${c(width)}" y="${below}" text-anchor="end">${cutText(word, LINE_WIDTH + GAP)}</text>`
    : html`<text class="strong" x="${c(width)}" y="${FIRST_LINE}" text-anchor="end">${cutText(value, side)}</text><text class="word ${kind}" x="${c(width)}" y="${FIRST_LINE + LINE}" text-anchor="end">${cutText(word, side)}</text>`;
  const thread = html`<path class="thread" d="M${c(lineX + LINE_WIDTH / 2)} ${MARGIN_LINE_ROW.height}V${c(height)}"/>`;
  return html`<g transform="translate(0 ${c(y)})">${drawMark(finding.outcome, MARK / 2, FIRST_LINE - MARK / 2 + 1, MARK)}<text class="name" x="${TEXT}" y="${FIRST_LINE}">${cutText(name, room)}</text>${joined(details)}${told}${thread}<g transform="translate(${c(lineX)} 0)">${drawParts(finding, MARGIN_LINE_ROW)}</g></g>`;
}
