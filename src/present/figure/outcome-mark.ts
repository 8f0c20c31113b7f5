import type { Outcome } from '../../core/result/assessment.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, type Markup } from '../markup/markup.ts';
import { OUTCOME_WORDS } from '../words/outcome-words.ts';

const CLASSES: Readonly<Record<Outcome, string>> = {
  pass: 'm-pass',
  fail: 'm-fail',
  inconclusive: 'm-inconclusive',
  notAssessed: 'm-unassessed',
  notApplicable: 'm-inapplicable',
};

// shares of the width of the mark
const CROSS_ARM = 0.44;
const CROSS_STROKE = 0.3;
const DISC = 0.5;
const HALF_DISC = 0.43;
const HALF_STROKE = 0.15;
const RING = 0.36;
const RING_STROKE = 0.14;
const DASH = 0.43;
const DASH_STROKE = 0.17;

/** Class that gives a mark its colour; shape and word say the same without it. */
export function outcomeClass(outcome: Outcome): string {
  return CLASSES[outcome];
}

/** Disc, cross, half disc, ring or dash around a centre. */
export function drawMark(outcome: Outcome, x: number, y: number, size: number): Markup {
  const kind = CLASSES[outcome];
  switch (outcome) {
    case 'pass':
      return html`<circle class="${kind} full" cx="${c(x)}" cy="${c(y)}" r="${c(size * DISC)}"/>`;
    case 'fail': {
      const arm = size * CROSS_ARM;
      const [left, right, top, bottom] = [c(x - arm), c(x + arm), c(y - arm), c(y + arm)];
      return html`<path class="${kind} open" stroke-width="${c(size * CROSS_STROKE)}" d="M${left} ${top}L${right} ${bottom}M${left} ${bottom}L${right} ${top}"/>`;
    }
    case 'inconclusive': {
      const r = size * HALF_DISC;
      const stroke = c(size * HALF_STROKE);
      return html`<circle class="${kind} blank" stroke-width="${stroke}" cx="${c(x)}" cy="${c(y)}" r="${c(r)}"/><path class="${kind}" stroke-width="${stroke}" d="M${c(x)} ${c(y - r)}A${c(r)} ${c(r)} 0 0 0 ${c(x)} ${c(y + r)}Z"/>`;
    }
    case 'notAssessed':
      return html`<circle class="${kind} open" stroke-width="${c(size * RING_STROKE)}" cx="${c(x)}" cy="${c(y)}" r="${c(size * RING)}"/>`;
    case 'notApplicable':
      return html`<path class="${kind} open" stroke-width="${c(size * DASH_STROKE)}" d="M${c(x - size * DASH)} ${c(y)}H${c(x + size * DASH)}"/>`;
  }
}

/** The mark alone, to lead a row. Hidden from ears by default, because the word stands beside it. */
export function drawOutcomeMark(outcome: Outcome, size: number, spoken = false): Markup {
  const half = size / 2;
  const ears = spoken ? html`role="img" aria-label="${OUTCOME_WORDS[outcome]}"` : html`aria-hidden="true"`;
  return html`<svg class="ml glyph" width="${size}" height="${size}" viewBox="0 0 ${size} ${size}" ${ears}>${drawMark(outcome, half, half, size)}</svg>`;
}
