import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup } from '../markup/markup.ts';
import type { CurveFrame } from './curve-frame.ts';
import { spreadLabels } from './spread-labels.ts';

/** The name of a curve, at its last point. */
export interface CurveNameAt {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

const CLEAR = 8;
const DESCENT = 4;
const LINE = 14; // from one name to the next
const LETTER = 6.4; // width of a letter at this size, generous

/** Names behind the ends of the curves, moved apart where ends meet; before the end where there is no room behind it. */
export function drawCurveNames(named: readonly CurveNameAt[], { bottom }: CurveFrame, width: number): Markup {
  const heights = spreadLabels(
    named.map(({ y }) => y + DESCENT),
    LINE,
    bottom - DESCENT,
  );
  return joined(
    named.map(({ text, x, y }, index) => {
      const fits = x + CLEAR + text.length * LETTER <= width;
      return html`<text class="says strong" x="${c(fits ? x + CLEAR : x - CLEAR)}" y="${c(heights[index] ?? y)}" text-anchor="${fits ? 'start' : 'end'}">${text}</text>`;
    }),
  );
}
