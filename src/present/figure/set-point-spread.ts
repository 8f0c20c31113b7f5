import { scaleLinear } from 'd3-scale';
import type { CircuitResult } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup } from '../markup/markup.ts';
import { amountText } from '../words/amount-text.ts';
import { SPREAD_WORDS, spreadSentence } from '../words/circuit-words.ts';
import type { CurveSize } from './curve-frame.ts';

interface Mark {
  readonly at: number;
  readonly text: string;
}
type Spread = NonNullable<CircuitResult['spreads']>[number];

export const SPREAD_WIDE: Pick<CurveSize, 'width'> = { width: 640 };
export const SPREAD_NARROW: Pick<CurveSize, 'width'> = { width: 330 };

const ROW = 124; // height of one level, px
const TITLE = 14; // baseline of its name
const LIMITS = 30; // baseline of the numbers of the limits
const TOP = 40; // of the bars
const BOTTOM = 90; // of the bars: the axis
const BAND = 97; // middle of the band of the root of the sum of squares
const TEXT = 113; // baseline of the numbers of the edges
const SIDE = 30; // free at both sides for the numbers
const ROOM = 0.06; // of the range, free beyond the outermost line
const LETTER = 6.4; // px

/** For each level the outputs of seeded draws as bars, the edges of the worst case, the band of the root of the sum of squares, and the limits. */
export function drawSetPointSpread(spreads: readonly Spread[], { width }: Pick<CurveSize, 'width'>): Markup {
  const height = spreads.length * ROW;
  const rows = spreads.map((spread, index) => html`<g transform="translate(0 ${index * ROW})">${drawRow(spread, width)}</g>`);
  return html`<svg class="ml fig load spread" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-label="${spreads.map(spreadSentence).join(' ')}">${joined(rows)}</svg>`;
}

function drawRow(spread: Spread, width: number): Markup {
  const { about, middle, half, least, most, from, to, counts, window, harmful } = spread;
  const lines = [least, most, from, to, middle - half, middle + half, ...(window ?? []), ...(harmful === null ? [] : [harmful])];
  const [low, high] = [Math.min(...lines), Math.max(...lines)];
  const x = scaleLinear([low - ROOM * (high - low), high + ROOM * (high - low)], [SIDE, width - SIDE]);
  const tallest = Math.max(...counts, 1);
  const step = (to - from) / counts.length;
  const bars = counts.map((count, index) => {
    const [left, right] = [x(from + index * step), x(from + (index + 1) * step)];
    const tall = (count / tallest) * (BOTTOM - TOP);
    return html`<rect class="bar" x="${c(left)}" y="${c(BOTTOM - tall)}" width="${c(Math.max(0, right - left))}" height="${c(tall)}"/>`;
  });
  const edges = [least, most].map((at) => html`<path class="claimed" d="M${c(x(at))} ${TOP}V${BOTTOM}"/>`);
  const limits = [...(window ?? []), ...(harmful === null ? [] : [harmful])].map(
    (at) => html`<path class="limit" d="M${c(x(at))} ${TOP - 4}V${BOTTOM + 4}"/>`,
  );
  const band = html`<path class="curve" d="M${c(x(middle - half))} ${BAND}H${c(x(middle + half))}M${c(x(middle - half))} ${BAND - 3}V${BAND + 3}M${c(x(middle + half))} ${BAND - 3}V${BAND + 3}"/>`;
  const below = spaced([least, most].map((at) => ({ at: x(at), text: volts(at) })));
  const above = spaced((window ?? []).map((value) => ({ at: x(value), text: `${volts(value)} ${SPREAD_WORDS.window}` })));
  // what harms is the outermost as a rule: its number has the line of the name to itself
  const harms = harmful === null ? [] : [beside(x(harmful), `${volts(harmful)} ${SPREAD_WORDS.harmful}`, about, width)];
  const set = (numbers: readonly Mark[], y: number): Markup =>
    joined(numbers.map(({ at, text }) => html`<text class="ax" x="${c(at)}" y="${y}" text-anchor="middle">${text}</text>`));
  return html`<text class="name" x="0" y="${TITLE}">${about}</text><path class="axis" d="M${SIDE} ${BOTTOM}H${width - SIDE}"/>${joined(bars)}${joined(edges)}${joined(limits)}${band}${set(harms, TITLE)}${set(above, LIMITS)}${set(below, TEXT)}`;
}

/** A number over its line, but clear of the name and inside the picture. */
function beside(at: number, text: string, name: string, width: number): Mark {
  const half = (text.length * LETTER) / 2;
  return { at: Math.min(Math.max(at, (name.length + 2) * LETTER + half), width - half), text };
}

/** Numbers from left to right, those left out that would touch the one before. */
function spaced(all: readonly Mark[]): Mark[] {
  const placed: Mark[] = [];
  for (const one of all.toSorted((a, b) => a.at - b.at)) {
    const last = placed.at(-1);
    const needed = last === undefined ? 0 : ((last.text.length + one.text.length) / 2 + 1) * LETTER;
    if (last === undefined || one.at - last.at >= needed) placed.push(one);
  }
  return placed;
}

function volts(value: number): string {
  return amountText({ value, unit: 'V', u: null });
}
