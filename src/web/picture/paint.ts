import { heatColour } from '../../present/figure/heat-colours.ts';
import type { Field } from './use-field.ts';

const COLOURS = 1024; // steps finer than an eye tells apart
const OPAQUE = 0xff000000;
const NO_NUMBER = 0; // see-through, so that the ground of the page shows

/** Colours packed as the bytes of a pixel lie in memory on every machine that browsers run on. */
const PACKED = Uint32Array.from({ length: COLOURS }, (_, k) => {
  const [red, green, blue] = heatColour(k / (COLOURS - 1));
  return OPAQUE + blue * 0x10000 + green * 0x100 + red;
});

/** Draws every number between two temperatures; below and above them the first and the last colour. */
export function paint(canvas: HTMLCanvasElement, { width, height, values }: Field, from: number, to: number): void {
  const context = canvas.getContext('2d');
  if (context === null) return;
  const image = context.createImageData(width, height);
  const pixels = new Uint32Array(image.data.buffer);
  const scale = (COLOURS - 1) / Math.max(to - from, Number.EPSILON);
  for (let at = 0; at < values.length; at += 1) {
    const value = values[at]!;
    const step = Math.min(COLOURS - 1, Math.max(0, Math.round((value - from) * scale)));
    pixels[at] = Number.isNaN(value) ? NO_NUMBER : PACKED[step]!;
  }
  context.putImageData(image, 0, 0);
}
