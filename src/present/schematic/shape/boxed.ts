import { html, joined } from '../../markup/markup.ts';
import { GRID, textWidth, upToGrid } from '../geometry.ts';
import type { Edge, Shape, ShapePin } from './shape.ts';

const PITCH = 20;
const STUB = 10;
const PADDING = 10;

/** A chip or any part without a form of its own: a box with its pins by name. Pins at top and bottom stand a text's width apart. */
export function boxed(pins: readonly { readonly pin: string; readonly edge: Edge }[]): Shape {
  const at = (edge: Edge): string[] => pins.filter((one) => one.edge === edge).map(({ pin }) => pin);
  const [left, right, top, bottom] = [at('left'), at('right'), at('top'), at('bottom')];
  const widest = (names: readonly string[]): number => Math.max(0, ...names.map(textWidth));
  const across = (names: readonly string[]): number => upToGrid(Math.max(PITCH, widest(names) + PADDING));
  const [stepTop, stepBottom] = [across(top), across(bottom)];
  const inner = upToGrid(Math.max(widest(left) + widest(right) + 3 * PADDING, top.length * stepTop, bottom.length * stepBottom, 4 * GRID));
  const high = upToGrid(Math.max(left.length, right.length, 1) * PITCH + (top.length > 0 ? PITCH : 0) + (bottom.length > 0 ? PITCH : 0));
  const width = inner + 2 * STUB;
  const height = high + 2 * STUB;
  const firstRow = STUB + (top.length > 0 ? PITCH : 0) + GRID;
  const placed: ShapePin[] = [];
  const texts: Shape['texts'][number][] = [];
  const stubs: string[] = [];
  for (const [index, pin] of left.entries()) {
    const y = firstRow + index * PITCH;
    placed.push({ pin, x: 0, y, edge: 'left' });
    stubs.push(`M0 ${y}H${STUB}`);
    texts.push({ at: { x: STUB + 4, y: y + 4 }, anchor: 'start', text: pin });
  }
  for (const [index, pin] of right.entries()) {
    const y = firstRow + index * PITCH;
    placed.push({ pin, x: width, y, edge: 'right' });
    stubs.push(`M${width} ${y}H${width - STUB}`);
    texts.push({ at: { x: width - STUB - 4, y: y + 4 }, anchor: 'end', text: pin });
  }
  for (const [edge, names, step] of [
    ['top', top, stepTop],
    ['bottom', bottom, stepBottom],
  ] as const)
    for (const [index, pin] of names.entries()) {
      const x = upToGrid((width - (names.length - 1) * step) / 2) + index * step;
      const y = edge === 'top' ? 0 : height;
      placed.push({ pin, x, y, edge });
      stubs.push(edge === 'top' ? `M${x} 0V${STUB}` : `M${x} ${height}V${height - STUB}`);
      texts.push({ at: { x, y: edge === 'top' ? STUB + 13 : height - STUB - 5 }, anchor: 'middle', text: pin });
    }
  return {
    width,
    height,
    pins: placed,
    art: html`<rect x="${STUB}" y="${STUB}" width="${inner}" height="${high}"/><path d="${stubs.join('')}"/>`,
    texts,
  };
}

const TERMINAL = 3.5; // radius of a terminal, px

/** Terminals of a connector, one below the other, with the name of each pin. */
export function terminals(pins: readonly string[], edge: 'left' | 'right'): Shape {
  const widest = upToGrid(Math.max(PITCH, ...pins.map((pin) => textWidth(pin))) + 2 * GRID);
  const height = pins.length * PITCH * 2 - PITCH;
  const x = edge === 'right' ? widest : 0;
  const circle = edge === 'right' ? widest - GRID : GRID;
  return {
    width: widest,
    height: Math.max(height, PITCH),
    pins: pins.map((pin, index) => ({ pin, x, y: GRID + index * 2 * PITCH, edge })),
    art: joined(
      pins.map((_pin, index) => {
        const y = GRID + index * 2 * PITCH;
        return html`<path d="M${x} ${y}H${edge === 'right' ? circle + TERMINAL : circle - TERMINAL}"/><circle class="clear" cx="${circle}" cy="${y}" r="${TERMINAL}"/>`;
      }),
    ),
    texts: pins.map((pin, index) => ({
      at: { x: edge === 'right' ? circle - 8 : circle + 8, y: GRID + index * 2 * PITCH + 4 },
      anchor: edge === 'right' ? ('end' as const) : ('start' as const),
      text: pin,
    })),
  };
}
