import { coordinate as c } from '../markup/coordinate.ts';
import { html, type Markup } from '../markup/markup.ts';

const POINT = 2.4;
const SQUARE = 4.4;
const SHAPES = 3;

/** A reading on a curve. Curves drawn together differ by the shape of their points, so that black alone tells them apart. */
export function drawPoint(x: number, y: number, shape: number): Markup {
  switch (shape % SHAPES) {
    case 0:
      return html`<circle class="point" cx="${c(x)}" cy="${c(y)}" r="${POINT}"/>`;
    case 1:
      return html`<circle class="point hollow" cx="${c(x)}" cy="${c(y)}" r="${POINT}"/>`;
    default:
      return html`<rect class="point" x="${c(x - SQUARE / 2)}" y="${c(y - SQUARE / 2)}" width="${SQUARE}" height="${SQUARE}"/>`;
  }
}

export function drawLine(points: readonly (readonly [number, number])[]): Markup {
  return html`<path class="curve" d="${points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${c(x)} ${c(y)}`).join('')}"/>`;
}
