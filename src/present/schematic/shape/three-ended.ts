import { html } from '../../markup/markup.ts';
import type { Shape } from './shape.ts';

const WIDTH = 40;
const HEIGHT = 60;
const RUN = 30; // x of collector and emitter

const BIPOLAR = html`<path d="M0 30H16M30 0V16L16 25M16 35L30 44V60"/><path class="bar" d="M16 16V44"/><path class="solid" d="M29 43L21 42L25 36Z"/>`;
const MOSFET = html`<path d="M0 30H12M12 18V42M30 0V19H18M30 60V30H18M18 41H30"/><path class="bar" d="M18 15V23M18 26V34M18 37V45"/><path class="solid" d="M18 30L25 26V34Z"/>`;
const REFERENCE = html`<path d="M20 0V60M8 27L12 22H28L32 17M0 40H14"/><path class="solid" d="M20 22L11 40H29Z"/>`;

/** Control pin at the left, or at the right when mirrored; current from top to bottom. */
export function transistor(kind: 'bipolarTransistor' | 'mosfet', mirrored: boolean): Shape {
  const [control, top, bottom] = kind === 'mosfet' ? ['G', 'D', 'S'] : ['B', 'C', 'E'];
  const x = (own: number): number => (mirrored ? WIDTH - own : own);
  const art = kind === 'mosfet' ? MOSFET : BIPOLAR;
  return {
    width: WIDTH,
    height: HEIGHT,
    pins: [
      { pin: control!, x: x(0), y: 30, edge: mirrored ? 'right' : 'left' },
      { pin: top!, x: x(RUN), y: 0, edge: 'top' },
      { pin: bottom!, x: x(RUN), y: HEIGHT, edge: 'bottom' },
    ],
    art: mirrored ? html`<g transform="translate(40 0) scale(-1 1)">${art}</g>` : art,
    texts: [],
  };
}

/** Cathode up, anode down, reference pin at the side of the divider. */
export function shuntReference(mirrored: boolean): Shape {
  return {
    width: WIDTH,
    height: HEIGHT,
    pins: [
      { pin: 'R', x: mirrored ? WIDTH : 0, y: 40, edge: mirrored ? 'right' : 'left' },
      { pin: 'K', x: 20, y: 0, edge: 'top' },
      { pin: 'A', x: 20, y: HEIGHT, edge: 'bottom' },
    ],
    art: mirrored ? html`<g transform="translate(40 0) scale(-1 1)">${REFERENCE}</g>` : REFERENCE,
    texts: [],
  };
}
