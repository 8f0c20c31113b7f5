import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import type { LineMark } from './line-mark.ts';
import { drawArrow, drawAxis, type MarginLineSize, placeOfMark } from './margin-line.ts';
import { drawMark } from './outcome-mark.ts';

/**
 * A whole unit on one axis, for a list of many: shock and fire above it, the rest below. The marks stand where they stand on their own
 * margin lines; the limit they meet in has no grade, because it is many limits.
 */
export const UNIT_AXIS: MarginLineSize = { width: 216, height: 30 };

const MARK = 8;
const ABOVE_HAZARDS: readonly string[] = ['shock', 'fire'];
const LIFT = 7;

export function drawUnitAxis(marks: readonly (LineMark & { readonly hazard: string })[], size: MarginLineSize = UNIT_AXIS): Markup {
  const read = marks.filter(({ outcome }) => outcome !== 'notAssessed' && outcome !== 'notApplicable');
  const middle = size.height / 2;
  const drawn = read.map((mark) => {
    const y = ABOVE_HAZARDS.includes(mark.hazard) ? middle - LIFT : middle + LIFT;
    const { x, off } = placeOfMark(mark, size);
    return html`${off === null ? NOTHING : drawArrow(mark.outcome, off === 'good', y, size)}${drawMark(mark.outcome, x, y, MARK)}`;
  });
  return html`<svg class="ml" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" aria-hidden="true">${drawAxis(size)}<path class="meet" d="M${c(size.width / 2)} 0V${size.height}"/>${joined(drawn)}</svg>`;
}
