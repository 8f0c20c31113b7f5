import type { Finding } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { drawParts, MARGIN_LINE_ROW, placeOfRatio } from './margin-line.ts';
import { drawMark, outcomeClass } from './outcome-mark.ts';
import { cutText, wrapLines } from './text-width.ts';

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

export const LIST_WIDE: ListSize = { width: 656 };
export const LIST_NARROW: ListSize = { width: 340 };

const NARROW = 560;
const HEAD = 20;
const TEXT = 18; // where text begins, right of the mark
const MARK = 11;
const FIRST_LINE = 14;
const LINE = 15;
const GAP = 8;
const LINE_WIDTH = MARGIN_LINE_ROW.width;
const WORD_WIDTH = 158;
const BESIDE = 2; // lines of text as high as a margin line
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
    const height = heightOf(row, { lineX, width, narrow });
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

interface Columns {
  readonly lineX: number;
  readonly width: number;
  readonly narrow: boolean;
}

/** Lines of a row: beside the margin line they keep clear of it, below it they take the whole width. */
function linesOf(
  { name, detail }: JudgedRow,
  { lineX, width, narrow }: Columns,
): { readonly names: readonly string[]; readonly details: readonly string[] } {
  const beside = lineX - TEXT - GAP;
  const names = wrapLines(name, beside);
  const filled = narrow && names.length < BESIDE ? [...names, ''] : names; // below the margin line
  return { names: narrow ? filled : names, details: detail.flatMap((text) => wrapLines(text, narrow ? width - TEXT : beside)) };
}

function heightOf(row: JudgedRow, columns: Columns): number {
  const { names, details } = linesOf(row, columns);
  const lines = names.length + details.length + (columns.narrow ? 1 : 0);
  return Math.max(MARGIN_LINE_ROW.height, lines * LINE + (columns.narrow ? GAP * 2 : GAP));
}

interface Place extends Columns {
  readonly y: number;
  readonly height: number;
}

function drawRow(row: JudgedRow, { y, height, lineX, width, narrow }: Place): Markup {
  const { finding, value, word } = row;
  const { names, details } = linesOf(row, { lineX, width, narrow });
  const kind = outcomeClass(finding.outcome);
  const at = (line: number): number => FIRST_LINE + LINE * line;
  const texts = [
    ...names.map((text, line) => html`<text class="name" x="${TEXT}" y="${at(line)}">${text}</text>`),
    ...details.map((text, line) => html`<text class="ax" x="${TEXT}" y="${at(names.length + line)}">${text}</text>`),
  ];
  const below = at(names.length + details.length);
  const side = width - lineX - LINE_WIDTH - GAP;
  const told = narrow
    ? html`<text class="strong" x="${TEXT}" y="${below}">${cutText(value, width / 2)}</text><text class="word ${kind}" x="${c(width)}" y="${below}" text-anchor="end">${cutText(word, width / 2)}</text>`
    : html`<text class="strong" x="${c(width)}" y="${FIRST_LINE}" text-anchor="end">${cutText(value, side)}</text>${joined(wrapLines(word, side).map((text, line) => html`<text class="word ${kind}" x="${c(width)}" y="${at(line + 1)}" text-anchor="end">${text}</text>`))}`;
  const thread = narrow ? NOTHING : html`<path class="thread" d="M${c(lineX + LINE_WIDTH / 2)} ${MARGIN_LINE_ROW.height}V${c(height)}"/>`;
  return html`<g transform="translate(0 ${c(y)})">${drawMark(finding.outcome, MARK / 2, FIRST_LINE - MARK / 2 + 1, MARK)}${joined(texts)}${told}${thread}<g transform="translate(${c(lineX)} 0)">${drawParts(finding, MARGIN_LINE_ROW)}</g></g>`;
}
