import { scaleLinear } from 'd3-scale';
import type { Finding, Outcome } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { type LineLimit, type LineMark, toLineMark } from './line-mark.ts';
import { drawMark, outcomeClass } from './outcome-mark.ts';

/** One judged quantity against its limit: the limit in the middle, good on the right, an axis of the logarithm of the ratio. */
export interface MarginLineSize {
  readonly width: number;
  readonly height: number;
}

export const MARGIN_LINE_ROW: MarginLineSize = { width: 124, height: 34 };
export const MARGIN_LINE_FINDING: MarginLineSize = { width: 290, height: 36 };

const SPAN = 2; // octaves each side of the limit: a quarter to four times
const PAD = 7;
const MARK = 9;
const WIDE = 240; // from this width the mark is larger
const WIDE_MARK = 12;
const BAND_HEIGHT = 1.84; // in marks
const TICK = 2.5;
const WINDOW_HALF = 2.5; // half the distance of the two strokes of a window
const SHORT_STROKE = 0.28; // share of the height left out at each end of the stroke for basic
const YES_NO_SHIFT = 0.34; // of half the width: how far from the limit a yes or a no stands
const INSET = 0.85; // in marks: how far inside the end a mark stands that is off the scale
const ANYWHERE_HALF = 4;
const HALO = 1.12; // in marks
const ARROW_STROKE = 0.2; // in marks

/** Where a ratio (above 1 is beyond the limit) stands on the line; beyond the scale it stands at the end. */
export function placeOfRatio(ratio: number, size: MarginLineSize): number {
  const x = scaleLinear([-SPAN, SPAN], [PAD, size.width - PAD]).clamp(true);
  return ratio <= 0 ? size.width - PAD : x(-Math.log2(ratio));
}

/** "×7.4" on the good side, "×0.08" on the bad: how many times as good as the limit asks. Past a thousand the number says nothing more. */
export function factorText(ratio: number): string {
  const TENFOLD = 10;
  const MOST = 1000;
  const good = 1 / ratio;
  if (good > MOST) return `over ×${MOST}`;
  if (good < 1 / MOST) return `under ×${1 / MOST}`;
  if (good >= TENFOLD) return `×${Number(good.toPrecision(2))}`;
  return good >= 1 ? `×${good.toFixed(1)}` : `×${Number(good.toPrecision(good < 1 / TENFOLD ? 1 : 2))}`;
}

export function drawMarginLine(finding: Finding, size: MarginLineSize): Markup {
  return drawLine(toLineMark(finding), size);
}

/** The same line, of what a list keeps of a finding. */
export function drawLine(mark: LineMark, size: MarginLineSize): Markup {
  return html`<svg class="ml" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" aria-hidden="true">${drawLineParts(mark, size)}</svg>`;
}

/** What stands inside the svg element, so that a column of lines can be one figure. */
export function drawParts(finding: Finding, size: MarginLineSize): Markup {
  return drawLineParts(toLineMark(finding), size);
}

function drawLineParts(mark: LineMark, size: MarginLineSize): Markup {
  if (mark.outcome === 'notApplicable') return NOTHING;
  if (mark.outcome === 'notAssessed') return html`${drawAxis(size)}${drawAnywhere(size)}${drawLimit(mark.limit, size)}`;
  const place = placeOfMark(mark, size);
  if (mark.margin === null && mark.rung === 'bridgedOrAbsent')
    return html`${drawAxis(size)}${drawLimit(mark.limit, size)}${drawBasic(mark.limit, size)}${drawOffScale(mark, false, '', size)}`;
  if (isYesOrNo(mark)) return html`${drawLimit(mark.limit, size)}${markAt(mark, place.x, size)}`;
  if (mark.anywhere) return html`${drawAxis(size)}${drawAnywhere(size)}${drawLimit(mark.limit, size)}${markAt(mark, place.x, size)}`;
  return html`${drawAxis(size)}${drawLimit(mark.limit, size)}${drawBasic(mark.limit, size)}${drawBand(mark, size)}${drawRatio(mark, size)}`;
}

/** Where the mark of a judged quantity stands, and at which end it stands when it is off the scale. */
export function placeOfMark(mark: LineMark, size: MarginLineSize): { readonly x: number; readonly off: 'good' | 'bad' | null } {
  const half = size.width / 2;
  if (isYesOrNo(mark) && mark.rung !== 'bridgedOrAbsent') {
    const shift = mark.outcome === 'pass' ? YES_NO_SHIFT : mark.outcome === 'fail' ? -YES_NO_SHIFT : 0;
    return { x: half * (1 + shift), off: null };
  }
  if (mark.anywhere && mark.rung !== 'bridgedOrAbsent') return { x: half, off: null };
  const ratio = mark.margin;
  const OFF = 2 ** SPAN;
  if (ratio !== null && ratio <= OFF && ratio >= 1 / OFF) return { x: placeOfRatio(ratio, size), off: null };
  // no ratio of two amounts is an infinite one: at the bad end when it fails, else at the good end
  const good = ratio === null ? mark.outcome !== 'fail' : ratio < 1;
  const inset = markSize(size) * INSET;
  return good ? { x: size.width - PAD - inset, off: 'good' } : { x: PAD + inset, off: 'bad' };
}

/** Found in a word, or a limit that is a list or a rule: no axis, the mark left of, on or right of the limit. */
function isYesOrNo({ margin, amounts, outcome }: LineMark): boolean {
  return margin === null && !(amounts && outcome !== 'inconclusive');
}

function markSize(size: MarginLineSize): number {
  return size.width >= WIDE ? WIDE_MARK : MARK;
}

export function drawAxis({ width, height }: MarginLineSize): Markup {
  const middle = height / 2;
  const ticks = [-SPAN, -1, 1, SPAN].map((octave) => {
    const x = c(placeOfRatio(2 ** -octave, { width, height }));
    return html`<path class="tick" d="M${x} ${c(middle - TICK)}V${c(middle + TICK)}"/>`;
  });
  return html`<path class="bad" d="M${PAD} ${c(middle)}H${c(width / 2)}"/><path class="good" d="M${c(width / 2)} ${c(middle)}H${c(width - PAD)}"/>${joined(ticks)}`;
}

function drawLimit(limit: LineLimit | null, { width, height }: MarginLineSize): Markup {
  const x = width / 2;
  if (limit === null) return html`<path class="thread" d="M${c(x)} 0V${height}"/>`;
  if (limit.two)
    return html`<path class="limit two ${limit.stroke}" d="M${c(x - WINDOW_HALF)} 0V${height}M${c(x + WINDOW_HALF)} 0V${height}"/>`;
  return html`<path class="limit ${limit.stroke}" d="M${c(x)} 0V${height}"/>`;
}

/** The lower rung of a barrier finding, at its own place on the same axis. */
function drawBasic(limit: LineLimit | null, size: MarginLineSize): Markup {
  if (limit === null || limit.basic === null) return NOTHING;
  const x = c(placeOfRatio(limit.basic.ratio, size));
  return html`<path class="limit rung ${limit.basic.stroke}" d="M${x} ${c(size.height * SHORT_STROKE)}V${c(size.height * (1 - SHORT_STROKE))}"/>`;
}

function drawAnywhere({ width, height }: MarginLineSize): Markup {
  const middle = height / 2;
  const [left, right, top, bottom] = [PAD, width - PAD, middle - ANYWHERE_HALF, middle + ANYWHERE_HALF];
  const GAP = 5;
  const lean = bottom - top;
  const strokes: string[] = [];
  for (let x = left; x + lean <= right; x += GAP) strokes.push(`M${c(x)} ${c(bottom)}L${c(x + lean)} ${c(top)}`);
  return html`<path class="hatching" d="${strokes.join('')}"/><rect class="anywhere" x="${left}" y="${c(top)}" width="${right - left}" height="${c(lean)}"/>`;
}

/** Where the true value lies with 95 %, or the whole side on which a bound leaves it. */
function drawBand({ band, outcome }: LineMark, size: MarginLineSize): Markup {
  if (band === null) return NOTHING;
  const [good, bad] = band;
  const OFF = 2 ** SPAN;
  if (good > OFF || (bad !== null && bad < 1 / OFF)) return NOTHING;
  const right = placeOfRatio(good, size);
  const left = bad === null ? PAD : placeOfRatio(bad, size);
  const tall = markSize(size) * BAND_HEIGHT;
  const width = Math.max(1, right - left);
  return html`<rect class="whisker ${outcomeClass(outcome)}" x="${c(left)}" y="${c((size.height - tall) / 2)}" width="${c(width)}" height="${c(tall)}"/>`;
}

function drawRatio(mark: LineMark, size: MarginLineSize): Markup {
  const { x, off } = placeOfMark(mark, size);
  const ratio = mark.margin;
  if (off === null) return markAt(mark, x, size);
  return drawOffScale(mark, off === 'good', ratio === null || ratio <= 0 ? '' : factorText(ratio), size);
}

function drawOffScale(judged: LineMark, good: boolean, factor: string, size: MarginLineSize): Markup {
  const mark = markSize(size);
  const x = good ? size.width - PAD - mark * INSET : PAD + mark * INSET;
  const middle = size.height / 2;
  const BESIDE = 0.95; // in marks, from the centre of the mark
  const label =
    factor === ''
      ? NOTHING
      : html`<text x="${c(good ? x - mark * BESIDE : x + mark * BESIDE)}" y="${c(middle - mark / 2 - 1)}" text-anchor="${good ? 'end' : 'start'}">${factor}</text>`;
  return html`${drawArrow(judged.outcome, good, middle, size)}${markAt(judged, x, size)}${label}`;
}

/** Outside the end of the axis: the value lies further on. */
export function drawArrow(outcome: Outcome, good: boolean, middle: number, size: MarginLineSize): Markup {
  const mark = markSize(size);
  const half = mark / 2;
  const GAP = 0.9; // px between the end of the axis and the arrow
  const tip = good
    ? `M${c(size.width - PAD - GAP)} ${c(middle - half)}l${c(half)} ${c(half)}l${c(-half)} ${c(half)}`
    : `M${c(PAD + GAP)} ${c(middle - half)}l${c(-half)} ${c(half)}l${c(half)} ${c(half)}`;
  return html`<path class="open ${outcomeClass(outcome)}" stroke-width="${c(mark * ARROW_STROKE)}" d="${tip}"/>`;
}

function markAt({ outcome }: LineMark, x: number, size: MarginLineSize): Markup {
  const mark = markSize(size);
  const halo = html`<circle class="halo" cx="${c(x)}" cy="${c(size.height / 2)}" r="${c((mark * HALO) / 2)}"/>`;
  return html`${halo}${drawMark(outcome, x, size.height / 2, mark)}`;
}
