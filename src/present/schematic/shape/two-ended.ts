import type { CircuitKind } from '../../../core/circuit/circuit.ts';
import { html, type Markup, NOTHING } from '../../markup/markup.ts';
import type { Shape } from './shape.ts';

const LENGTH = 60;
const BREADTH = 20;

/** Art of a two-ended part lying from left to right on a box of 60 by 20, the first pin at the left. Forms after IEC 60617. */
const ART: Partial<Readonly<Record<CircuitKind, Markup>>> = {
  resistor: html`<path d="M0 10H12M48 10H60"/><rect x="12" y="4" width="36" height="12"/>`,
  fusibleResistor: html`<path d="M0 10H60"/><rect x="12" y="4" width="36" height="12" class="clear"/><path d="M12 16L18 4M42 16L48 4"/>`,
  fuse: html`<path d="M0 10H60"/><rect x="12" y="4" width="36" height="12" class="clear"/>`,
  ntc: html`<path d="M0 10H12M48 10H60M14 19H20L42 1"/><rect x="12" y="4" width="36" height="12"/>`,
  varistor: html`<path d="M0 10H12M48 10H60M14 19H20L42 1H46"/><rect x="12" y="4" width="36" height="12"/>`,
  ceramicCapacitor: html`<path d="M0 10H27M33 10H60M27 1V19M33 1V19"/>`,
  filmCapacitor: html`<path d="M0 10H27M33 10H60M27 1V19M33 1V19"/>`,
  capacitor: html`<path d="M0 10H27M33 10H60M27 1V19M33 1V19"/>`,
  electrolyticCapacitor: html`<path d="M0 10H26M33 10H60M33 1V19M16 2V8M13 5H19"/><rect x="26" y="1" width="4" height="18"/>`,
  inductor: html`<path d="M0 10H12A4.5 4.5 0 0 1 21 10A4.5 4.5 0 0 1 30 10A4.5 4.5 0 0 1 39 10A4.5 4.5 0 0 1 48 10H60"/>`,
  diode: html`<path d="M0 10H60M38 2V18"/><path class="solid" d="M22 2L38 10L22 18Z"/>`,
  zener: html`<path d="M0 10H60M33 2H38V18"/><path class="solid" d="M22 2L38 10L22 18Z"/>`,
  led: html`<path d="M0 10H60M38 4V18M32 3L38 -3M38 -3H34M38 -3V1M39 5L45 -1M45 -1H41M45 -1V3"/><path class="solid" d="M22 3L38 10L22 17Z"/>`,
  jumper: html`<path d="M0 10H60"/><circle cx="14" cy="10" r="2.5" class="clear"/><circle cx="46" cy="10" r="2.5" class="clear"/>`,
};

export function isTwoEnded(kind: CircuitKind | null): boolean {
  return kind !== null && ART[kind] !== undefined;
}

/** Lying, first pin left or right; or standing, first pin at the top or at the bottom. */
export type Lie = 'firstLeft' | 'firstRight' | 'firstTop' | 'firstBottom';

export function twoEnded(kind: CircuitKind, pins: readonly [string, string], lie: Lie): Shape {
  const art = ART[kind] ?? NOTHING;
  const [first, second] = pins;
  const middle = BREADTH / 2;
  if (lie === 'firstLeft' || lie === 'firstRight') {
    const turned = lie === 'firstRight' ? html`<g transform="rotate(180 30 10)">${art}</g>` : art;
    const [left, right] = lie === 'firstLeft' ? [first, second] : [second, first];
    return {
      width: LENGTH,
      height: BREADTH,
      pins: [
        { pin: left, x: 0, y: middle, edge: 'left' },
        { pin: right, x: LENGTH, y: middle, edge: 'right' },
      ],
      art: turned,
      texts: [],
    };
  }
  const turned =
    lie === 'firstTop'
      ? html`<g transform="translate(20 0) rotate(90)">${art}</g>`
      : html`<g transform="translate(0 60) rotate(-90)">${art}</g>`;
  const [top, bottom] = lie === 'firstTop' ? [first, second] : [second, first];
  return {
    width: BREADTH,
    height: LENGTH,
    pins: [
      { pin: top, x: middle, y: 0, edge: 'top' },
      { pin: bottom, x: middle, y: LENGTH, edge: 'bottom' },
    ],
    art: turned,
    texts: [],
  };
}
