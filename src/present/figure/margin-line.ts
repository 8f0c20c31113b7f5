import { scaleLinear } from 'd3-scale';
import type { Finding, Limit } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { GRADE_STROKES } from '../words/grade-words.ts';
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
  return html`<svg class="ml" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" aria-hidden="true">${drawParts(finding, size)}</svg>`;
}

/** What stands inside the svg element, so that a column of lines can be one figure. */
export function drawParts(finding: Finding, size: MarginLineSize): Markup {
  if (finding.outcome === 'notApplicable') return NOTHING;
  if (finding.outcome === 'notAssessed') return html`${drawAxis(size)}${drawAnywhere(size)}${drawLimit(finding.limit, size)}`;
  const yesOrNo = drawYesOrNo(finding, size);
  if (yesOrNo !== null) return yesOrNo;
  if (finding.measured !== null && 'side' in finding.measured && finding.measured.side === 'anywhere')
    return html`${drawAxis(size)}${drawAnywhere(size)}${drawLimit(finding.limit, size)}${markAt(finding, size.width / 2, size)}`;
  return html`${drawAxis(size)}${drawLimit(finding.limit, size)}${drawBasic(finding, size)}${drawBand(finding, size)}${drawRatio(finding, size)}`;
}

function markSize(size: MarginLineSize): number {
  return size.width >= WIDE ? WIDE_MARK : MARK;
}

function drawAxis({ width, height }: MarginLineSize): Markup {
  const middle = height / 2;
  const ticks = [-SPAN, -1, 1, SPAN].map((octave) => {
    const x = c(placeOfRatio(2 ** -octave, { width, height }));
    return html`<path class="tick" d="M${x} ${c(middle - TICK)}V${c(middle + TICK)}"/>`;
  });
  return html`<path class="bad" d="M${PAD} ${c(middle)}H${c(width / 2)}"/><path class="good" d="M${c(width / 2)} ${c(middle)}H${c(width - PAD)}"/>${joined(ticks)}`;
}

function drawLimit(limit: Limit | null, { width, height }: MarginLineSize): Markup {
  const x = width / 2;
  if (limit === null) return html`<path class="thread" d="M${c(x)} 0V${height}"/>`;
  const stroke = GRADE_STROKES[limit.grade];
  if (limit.kind === 'within')
    return html`<path class="limit two ${stroke}" d="M${c(x - WINDOW_HALF)} 0V${height}M${c(x + WINDOW_HALF)} 0V${height}"/>`;
  return html`<path class="limit ${stroke}" d="M${c(x)} 0V${height}"/>`;
}

/** The lower rung of a barrier finding, at its own place on the same axis. */
function drawBasic(finding: Finding, size: MarginLineSize): Markup {
  const basic = finding.others.find(({ name }) => name === 'basic');
  const asked = finding.limit?.at?.value;
  const lower = basic?.at?.value;
  if (basic === undefined || finding.limit?.name === 'basic' || asked === undefined || lower === undefined || lower <= 0) return NOTHING;
  const x = c(placeOfRatio(asked / lower, size));
  return html`<path class="limit rung ${GRADE_STROKES[basic.grade]}" d="M${x} ${c(size.height * SHORT_STROKE)}V${c(size.height * (1 - SHORT_STROKE))}"/>`;
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
function drawBand(finding: Finding, size: MarginLineSize): Markup {
  const ends = bandEnds(finding);
  if (ends === null) return NOTHING;
  const [good, bad] = ends;
  const OFF = 2 ** SPAN;
  if (good > OFF || bad < 1 / OFF) return NOTHING;
  const right = placeOfRatio(good, size);
  const left = bad === Number.POSITIVE_INFINITY ? PAD : placeOfRatio(bad, size);
  const tall = markSize(size) * BAND_HEIGHT;
  const width = Math.max(1, right - left);
  return html`<rect class="whisker ${outcomeClass(finding.outcome)}" x="${c(left)}" y="${c((size.height - tall) / 2)}" width="${c(width)}" height="${c(tall)}"/>`;
}

/** Ratios at the good and the bad end. */
function bandEnds(finding: Finding): readonly [number, number] | null {
  if (finding.marginBand !== null) return finding.marginBand;
  const side = finding.measured !== null && 'value' in finding.measured ? finding.measured.side : undefined;
  if (side === undefined || finding.margin === null) return null;
  const opensToGood = (side === 'below') === (finding.limit?.kind === 'atMost');
  return opensToGood ? [0, finding.margin] : [finding.margin, Number.POSITIVE_INFINITY];
}

function drawRatio(finding: Finding, size: MarginLineSize): Markup {
  const ratio = finding.margin;
  const OFF = 2 ** SPAN;
  if (ratio !== null && ratio <= OFF && ratio >= 1 / OFF) return markAt(finding, placeOfRatio(ratio, size), size);
  // no ratio of two amounts is an infinite one: at the bad end when it fails, else at the good end
  const good = ratio === null ? finding.outcome !== 'fail' : ratio < 1;
  return drawOffScale(finding, good, ratio === null || ratio <= 0 ? '' : factorText(ratio), size);
}

function drawOffScale(finding: Finding, good: boolean, factor: string, size: MarginLineSize): Markup {
  const mark = markSize(size);
  const x = good ? size.width - PAD - mark * INSET : PAD + mark * INSET;
  const middle = size.height / 2;
  const half = mark / 2;
  const GAP = 0.9; // px between the end of the axis and the arrow
  const tip = good
    ? `M${c(size.width - PAD - GAP)} ${c(middle - half)}l${c(half)} ${c(half)}l${c(-half)} ${c(half)}`
    : `M${c(PAD + GAP)} ${c(middle - half)}l${c(-half)} ${c(half)}l${c(half)} ${c(half)}`;
  const BESIDE = 0.95; // in marks, from the centre of the mark
  const label =
    factor === ''
      ? NOTHING
      : html`<text x="${c(good ? x - mark * BESIDE : x + mark * BESIDE)}" y="${c(middle - half - 1)}" text-anchor="${good ? 'end' : 'start'}">${factor}</text>`;
  return html`<path class="open ${outcomeClass(finding.outcome)}" stroke-width="${c(mark * ARROW_STROKE)}" d="${tip}"/>${markAt(finding, x, size)}${label}`;
}

/** Found in a word, or a limit that is a list or a rule: no axis, the mark left of, on or right of the limit. */
function drawYesOrNo(finding: Finding, size: MarginLineSize): Markup | null {
  if (finding.margin !== null) return null;
  if (finding.rung === 'bridgedOrAbsent')
    return html`${drawAxis(size)}${drawLimit(finding.limit, size)}${drawBasic(finding, size)}${drawOffScale(finding, false, '', size)}`;
  const amounts = finding.measured !== null && 'value' in finding.measured && finding.limit?.at !== undefined;
  if (amounts && finding.outcome !== 'inconclusive') return null;
  const half = size.width / 2;
  const x = finding.outcome === 'pass' ? half * (1 + YES_NO_SHIFT) : finding.outcome === 'fail' ? half * (1 - YES_NO_SHIFT) : half;
  return html`${drawLimit(finding.limit, size)}${markAt(finding, x, size)}`;
}

function markAt(finding: Finding, x: number, size: MarginLineSize): Markup {
  const mark = markSize(size);
  const halo = html`<circle class="halo" cx="${c(x)}" cy="${c(size.height / 2)}" r="${c((mark * HALO) / 2)}"/>`;
  return html`${halo}${drawMark(finding.outcome, x, size.height / 2, mark)}`;
}
