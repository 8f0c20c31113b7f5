import { html, joined, type Markup } from '../../markup/markup.ts';
import type { Shape, ShapePin } from './shape.ts';

const COIL = 'A5 5 0 0 1'; // one turn of a winding, bulging to the right

/** A bridge: mains at the left, plus at the right, minus below. */
export function bridge(): Shape {
  return {
    width: 60,
    height: 60,
    pins: [
      { pin: '~1', x: 0, y: 20, edge: 'left' },
      { pin: '~2', x: 0, y: 40, edge: 'left' },
      { pin: '+', x: 60, y: 20, edge: 'right' },
      { pin: '-', x: 30, y: 60, edge: 'bottom' },
    ],
    art: html`<rect x="5" y="5" width="50" height="50"/><path d="M0 20H5M0 40H5M55 20H60M30 55V60M55 5L5 55M11 19C14 13 18 13 20 17S26 21 28 15M34 38H48M34 44H48"/>`,
    texts: [],
  };
}

/** Two windings on one core, both through from left to right. */
export function choke(): Shape {
  const coil = (y: number): string =>
    `M0 ${y}H12A4.5 4.5 0 0 1 21 ${y}A4.5 4.5 0 0 1 30 ${y}A4.5 4.5 0 0 1 39 ${y}A4.5 4.5 0 0 1 48 ${y}H60`;
  return {
    width: 60,
    height: 60,
    pins: [
      { pin: '1', x: 0, y: 20, edge: 'left' },
      { pin: '2', x: 60, y: 20, edge: 'right' },
      { pin: '3', x: 0, y: 50, edge: 'left' },
      { pin: '4', x: 60, y: 50, edge: 'right' },
    ],
    art: html`<path d="${coil(20)}${coil(50)}M12 27H48M12 31H48"/><circle class="dot" cx="9" cy="14" r="1.8"/><circle class="dot" cx="9" cy="44" r="1.8"/>`,
    texts: [],
  };
}

export interface DrawnWinding {
  readonly name: string;
  readonly label: string;
  /** Dot end up. */
  readonly dotUp: boolean;
}

const WINDING = 60;
const PITCH = 80; // from winding to winding
export const TRANSFORMER_WIDTH = 100;

/** Windings on both sides of the core; each with its dot. The middle stays free for the barrier. */
export function transformer(left: readonly DrawnWinding[], right: readonly DrawnWinding[]): Shape {
  const rows = Math.max(left.length, right.length, 1);
  const height = rows * PITCH - (PITCH - WINDING);
  const pins: ShapePin[] = [];
  const art: Markup[] = [];
  const texts: { at: { x: number; y: number }; anchor: 'start' | 'end'; text: string }[] = [];
  for (const [side, windings] of [
    ['left', left],
    ['right', right],
  ] as const) {
    const offset = ((rows - windings.length) * PITCH) / 2;
    for (const [index, { name, label, dotUp }] of windings.entries()) {
      const top = Math.round(offset / 20) * 20 + index * PITCH;
      const [x, turn, bulge] = side === 'left' ? [0, 34, COIL] : [TRANSFORMER_WIDTH, TRANSFORMER_WIDTH - 34, 'A5 5 0 0 0'];
      const first = top + 10;
      const turns = [1, 2, 3, 4].map((one) => `${bulge} ${turn} ${first + one * 10}`).join('');
      art.push(
        html`<path d="M${x} ${first}H${turn}${turns}H${x}"/><circle class="dot" cx="${side === 'left' ? turn - 6 : turn + 6}" cy="${dotUp ? first + 5 : first + 35}" r="1.8"/>`,
      );
      pins.push(
        { pin: `${name}.${dotUp ? '1' : '2'}`, x, y: first, edge: side },
        { pin: `${name}.${dotUp ? '2' : '1'}`, x, y: first + 40, edge: side },
      );
      texts.push({
        at: { x: side === 'left' ? 2 : TRANSFORMER_WIDTH - 2, y: first + 24 },
        anchor: side === 'left' ? 'start' : 'end',
        text: label,
      });
    }
  }
  return { width: TRANSFORMER_WIDTH, height, pins, art: joined(art), texts };
}

/** Light from right to left: transistor on the mains side, LED on the other; `mirrored` the other way round. */
export function optocoupler(mirrored: boolean): Shape {
  const art = html`<path d="M0 10H20L30 20M30 40L20 50H0M100 10H80V50H100M72 36H88"/><path class="bar" d="M30 14V46"/><path class="solid" d="M20 50L29 47L24 42Z"/><path class="solid" d="M72 22H88L80 36Z"/><path d="M66 24H48M66 32H48M52 21L48 24L52 27M52 29L48 32L52 35"/>`;
  const x = (own: number): number => (mirrored ? 100 - own : own);
  const [near, far] = mirrored ? (['right', 'left'] as const) : (['left', 'right'] as const);
  return {
    width: 100,
    height: 60,
    pins: [
      { pin: 'C', x: x(0), y: 10, edge: near },
      { pin: 'E', x: x(0), y: 50, edge: near },
      { pin: 'A', x: x(100), y: 10, edge: far },
      { pin: 'K', x: x(100), y: 50, edge: far },
    ],
    art: mirrored ? html`<g transform="translate(100 0) scale(-1 1)">${art}</g>` : art,
    texts: [],
  };
}
