import type { ThermalField } from '../app/picture/read-picture.ts';

const WORD = 4; // bytes of a number

/** A thermal picture for the page: width and height, then °C row by row, little-endian on any machine. */
export function toPictureBytes({ width, height, values }: ThermalField): Uint8Array {
  const bytes = new Uint8Array(WORD * (2 + values.length));
  const view = new DataView(bytes.buffer);
  view.setUint32(0, width, true);
  view.setUint32(WORD, height, true);
  for (const [index, value] of values.entries()) view.setFloat32(WORD * (index + 2), value, true);
  return bytes;
}
