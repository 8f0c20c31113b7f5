import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup } from '../markup/markup.ts';
import { type MarginLineSize, placeOfRatio } from './margin-line.ts';

/** What stands over a column of margin lines: ratios (above 1 is beyond the limit) with what they mean. */
export const SCALE_TICKS = [
  [4, '×¼'],
  [2, '×½'],
  [1, 'limit'],
  [0.5, '×2'],
  [0.25, '×4'],
] as const;

const HEIGHT = 16;
const BASELINE = 12;

export function drawScale({ width }: Pick<MarginLineSize, 'width'>): Markup {
  const size = { width, height: HEIGHT };
  const ticks = SCALE_TICKS.map(
    ([ratio, text]) =>
      html`<text class="${text === 'limit' ? 'at-limit' : ''}" x="${c(placeOfRatio(ratio, size))}" y="${BASELINE}" text-anchor="middle">${text}</text>`,
  );
  return html`<svg class="ml scale" width="${width}" height="${HEIGHT}" viewBox="0 0 ${width} ${HEIGHT}" aria-hidden="true">${joined(ticks)}</svg>`;
}
