import { quantileSorted } from 'd3-array';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import type { LineMark } from './line-mark.ts';
import { drawAxis, type MarginLineSize, placeOfMark, placeOfRatio } from './margin-line.ts';
import { drawMark } from './outcome-mark.ts';

/** Where all cases stand on one check, one short stroke for each place that is taken, taller where many stand, with one case's own mark. */
export const PLACE_STRIP: MarginLineSize = { width: 320, height: 56 };

const STEP = 2; // px that are told apart
const LEAST_TALL = 8;
const MOST_TALL = 34;
const MARK = 12;
const MIDDLE_HALF = [0.25, 0.75] as const;
const NINE_OF_TEN = [0.05, 0.95] as const;

/** `ratios` in order, the worst first. */
export function drawPlaceStrip(ratios: readonly number[], own: LineMark | null, size: MarginLineSize = PLACE_STRIP): Markup {
  const middle = size.height / 2;
  const counts = new Map<number, number>();
  for (const ratio of ratios) {
    const place = Math.round(placeOfRatio(ratio, size) / STEP) * STEP;
    counts.set(place, (counts.get(place) ?? 0) + 1);
  }
  const most = Math.max(1, ...counts.values());
  const strokes = [...counts].map(([x, count]) => {
    const half = (LEAST_TALL + (MOST_TALL - LEAST_TALL) * (count / most)) / 2;
    return `M${c(x)} ${c(middle - half)}V${c(middle + half)}`;
  });
  const from = (shares: readonly [number, number], kind: string): Markup => {
    const [worst, best] = shares.map((share) => quantileSorted([...ratios], share)) as [number | undefined, number | undefined];
    if (worst === undefined || best === undefined) return NOTHING;
    const left = placeOfRatio(worst, size);
    return html`<rect class="${kind}" x="${c(left)}" y="${c(middle - MOST_TALL / 2)}" width="${c(placeOfRatio(best, size) - left)}" height="${MOST_TALL}"/>`;
  };
  const mark = own === null ? NOTHING : drawOwn(own, size);
  return html`<svg class="ml places" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" aria-hidden="true">${from(NINE_OF_TEN, 'most')}${from(MIDDLE_HALF, 'half')}${drawAxis(size)}<path class="meet" d="M${c(size.width / 2)} 0V${size.height}"/><path class="others" d="${strokes.join('')}"/>${mark}</svg>`;
}

/** Only the strokes of the others beside one mark: few cases, one hazard. */
export function drawAmong(ratios: readonly number[], own: LineMark | null, size: MarginLineSize): Markup {
  const middle = size.height / 2;
  const strokes = ratios.map((ratio) => `M${c(placeOfRatio(ratio, size))} ${c(middle - LEAST_TALL / 2)}V${c(middle + LEAST_TALL / 2)}`);
  return html`<svg class="ml places" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" aria-hidden="true">${drawAxis(size)}<path class="thread" d="M${c(size.width / 2)} 0V${size.height}"/><path class="others" d="${strokes.join('')}"/>${own === null ? NOTHING : drawOwn(own, size)}</svg>`;
}

function drawOwn(own: LineMark, size: MarginLineSize): Markup {
  const { x } = placeOfMark(own, size);
  const middle = size.height / 2;
  return joined([
    html`<circle class="halo" cx="${c(x)}" cy="${c(middle)}" r="${c(MARK / 2 + 1)}"/>`,
    drawMark(own.outcome, x, middle, MARK),
  ]);
}
