import { drawMark } from '../figure/outcome-mark.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, type Markup } from '../markup/markup.ts';

/** What stands beside a reference: a finding fails on the part, one is inconclusive on it, or its trace is probably a slip. Worst first. */
export const PART_MARKS = ['fail', 'inconclusive', 'slip'] as const;
export type PartMark = (typeof PART_MARKS)[number];

const SIZE = 9; // px
/** Room that a mark takes behind a text, px. */
export const MARK_ROOM = 14;

/** The mark of an outcome as everywhere, or an open triangle for a slip; shape alone tells them apart. */
export function drawPartMark(mark: PartMark, x: number, y: number): Markup {
  if (mark !== 'slip') return html`<g class="mark">${drawMark(mark, x, y, SIZE)}</g>`;
  const half = SIZE / 2;
  return html`<g class="mark"><path class="m-slip" d="M${c(x - half)} ${c(y + half)}L${c(x)} ${c(y - half)}L${c(x + half)} ${c(y + half)}Z"/></g>`;
}
