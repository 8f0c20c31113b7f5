import { INITIAL, type parseRules, propertiesOf, type Style, styleOf } from './cascade.ts';
import type { FigureElement } from './read-figure.ts';
import { type LineStyle, type Page, widthOfLine, writeLine } from './write-line.ts';

export interface FigureInk {
  readonly rules: ReturnType<typeof parseRules>;
  readonly colours: ReadonlyMap<string, string>;
}

interface Extent {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Colours of a style sheet's root, by name. */
export const coloursOf = (root: string): ReadonlyMap<string, string> => new Map(propertiesOf(root));

/** What the figure covers: its own box, and the lines of text below and above that are longer than it is wide. */
export function extentOf(page: Page, figure: FigureElement, ink: FigureInk): Extent {
  const [x, y, width, height] = numbersOf(figure.attributes.get('viewBox') ?? '');
  if (x === undefined || y === undefined || width === undefined || height === undefined) throw new Error('a figure without its box');
  const own = styleOf([figure], INITIAL, ink.rules, ink.colours);
  let [left, right] = [x, x + width];
  for (const child of figure.children.filter(({ tag }) => tag === 'text')) {
    const style = styleOf([figure, child], own, ink.rules, ink.colours);
    const at = numberOf(child, 'x');
    const wide = widthOfLine(page, child.text, lineStyleOf(style));
    const anchor = style.get('text-anchor');
    const from = anchor === 'end' ? at - wide : anchor === 'middle' ? at - wide / 2 : at;
    [left, right] = [Math.min(left, from), Math.max(right, from + wide)];
  }
  return { x: left, y, width: right - left, height };
}

/** Draws a figure in its own units where the page stands now. An element, a transform or a property that paper does not know is a defect. */
export function drawFigure(page: Page, figure: FigureElement, ink: FigureInk): void {
  drawElement(page, [figure], INITIAL, ink);
}

function drawElement(page: Page, way: readonly FigureElement[], inherited: Style, ink: FigureInk): void {
  const element = way.at(-1)!;
  const style = styleOf(way, inherited, ink.rules, ink.colours);
  const n = (name: string): number => numberOf(element, name);
  switch (element.tag) {
    case 'svg':
    case 'g':
      page.save();
      turn(page, element.attributes.get('transform') ?? '');
      for (const child of element.children) drawElement(page, [...way, child], style, ink);
      page.restore();
      break;
    case 'path':
      paint(page, style, () => page.path(element.attributes.get('d') ?? ''));
      break;
    case 'rect':
      paint(page, style, () => page.rect(n('x'), n('y'), n('width'), n('height')));
      break;
    case 'circle':
      paint(page, style, () => page.circle(n('cx'), n('cy'), n('r')));
      break;
    case 'text':
      writeLine(page, element.text, n('x'), n('y'), lineStyleOf(style), style.get('text-anchor'));
      break;
    default:
      throw new Error(`paper cannot draw a ${element.tag}`);
  }
}

function paint(page: Page, style: Style, outline: () => Page): void {
  const [fill, stroke, join] = [style.get('fill')!, style.get('stroke')!, style.get('stroke-linejoin')!];
  if (fill === 'none' && stroke === 'none') return;
  page.lineWidth(Number(style.get('stroke-width'))).lineJoin(join as 'miter' | 'round' | 'bevel');
  outline();
  if (stroke === 'none') page.fill(fill);
  else if (fill === 'none') page.stroke(stroke);
  else page.fillAndStroke(fill, stroke);
}

function lineStyleOf(style: Style): LineStyle {
  return {
    size: Number.parseFloat(style.get('font-size')!),
    weight: Number(style.get('font-weight')),
    italic: style.get('font-style') === 'italic',
    colour: style.get('fill')!,
  };
}

/** SVG 2, transform functions: those that symbols use. */
function turn(page: Page, transform: string): void {
  for (const [, name, given] of transform.matchAll(/([a-z]+)\(([^)]*)\)/g)) {
    const [a = 0, b = 0, c = 0] = numbersOf(given!);
    if (name === 'translate') page.translate(a, b);
    else if (name === 'rotate') page.rotate(a, { origin: [b, c] });
    else if (name === 'scale') page.scale(a, b);
    else throw new Error(`paper cannot ${name} a symbol`);
  }
}

const numbersOf = (text: string): number[] =>
  text
    .split(/[\s,]+/)
    .filter((one) => one !== '')
    .map(Number);

function numberOf({ tag, attributes }: FigureElement, name: string): number {
  const value = Number(attributes.get(name) ?? '0');
  if (!Number.isFinite(value)) throw new Error(`${name} of a ${tag} is no number`);
  return value;
}
