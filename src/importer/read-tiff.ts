import { type Refusal, refuse } from '../core/quantity/refusal.ts';
import type { Doubts } from './doubts.ts';
import type { Column, InstrumentFile } from './instrument-file.ts';
import { askUnit } from './matrix.ts';
import { settleScale } from './scale-beside.ts';

/**
 * A picture of 16-bit numbers, as thermal cameras store one, by TIFF 6.0 (1992): section 2 the structure, section 4 the strips of a picture with one
 * number per pixel. Not packed, since what unpacks belongs to photos. Colours are no temperatures and are refused.
 */
const TAG = {
  width: 256,
  height: 257,
  bits: 258,
  compression: 259,
  offsets: 273,
  perPixel: 277,
  rowsPerStrip: 278,
  lengths: 279,
  format: 339,
} as const;
const BYTES_OF: Readonly<Record<number, number>> = { 1: 1, 3: 2, 4: 4 }; // BYTE, SHORT, LONG
const ENTRY = 12; // bytes of an entry of the directory
const INLINE = 4; // bytes that stand in the entry itself
const BITS = 16;
const UNPACKED = 1;
const SIGNED = 2;
const MOST_SIDE = 8192; // pixels; as the widest text

export function isTiff(bytes: Uint8Array): boolean {
  const [a, b, c, d] = bytes;
  return (a === 0x49 && b === 0x49 && c === 0x2a && d === 0) || (a === 0x4d && b === 0x4d && c === 0 && d === 0x2a);
}

const EXPECTED = 'a TIFF with one 16-bit number per pixel, saved without compression';

export function readTiff(bytes: Uint8Array, doubts: Doubts): InstrumentFile | Refusal {
  const pixels = readPixels(bytes);
  if ('refused' in pixels) return pixels;
  const { width, height } = pixels;
  let columns = Array.from({ length: width }, (_, x) => Float64Array.from({ length: height }, (_, y) => pixels.at(y * width + x)));
  const unit = askUnit(
    columns.map((_, x) => x),
    doubts,
  );
  const drop = settleScale(columns, height, doubts);
  columns = columns.slice(drop.left, width - drop.right).map((column) => column.slice(drop.top, height - drop.bottom));
  return {
    encoding: 'tiff',
    separator: 'none',
    decimalMark: 'point',
    lineEnd: 'none',
    headerRows: [],
    unitRow: null,
    firstDataRow: 1,
    preamble: {},
    shape: 'matrix',
    rows: height - drop.top - drop.bottom,
    columns: columns.map(
      (values, x): Column => ({
        name: `column ${x + 1}`,
        unit: unit?.symbol ?? null,
        values,
        missing: { count: 0, reasons: {} },
        kind: 'number',
        usable: true,
        doubts: [],
      }),
    ),
    timeBase: null,
    timeStepS: null,
    skippedRows: {},
    doubts: doubts.open,
  };
}

interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly at: (index: number) => number;
}

function readPixels(bytes: Uint8Array): Pixels | Refusal {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const little = bytes[0] === 0x49;
  const broken = (): Refusal => refuse('tiff-broken', 'a TIFF that ends too early or contradicts itself', EXPECTED);
  try {
    const entries = readDirectory(view, little);
    const one = (tag: number, otherwise: number): number => entries.get(tag)?.[0] ?? otherwise;
    const [width, height] = [one(TAG.width, 0), one(TAG.height, 0)];
    if (one(TAG.perPixel, 1) !== 1 || one(TAG.bits, 1) !== BITS || one(TAG.format, 1) > SIGNED)
      return refuse(
        'tiff-colours',
        `${one(TAG.perPixel, 1)} numbers of ${one(TAG.bits, 1)} bits per pixel: colours, no temperatures`,
        EXPECTED,
      );
    if (one(TAG.compression, UNPACKED) !== UNPACKED) return refuse('tiff-packed', 'a TIFF saved with compression', EXPECTED);
    if (width === 0 || height === 0 || width > MOST_SIDE || height > MOST_SIDE)
      return refuse('too-wide', `${width} × ${height} pixels`, `1 to ${MOST_SIDE} pixels each way`);
    const offsets = entries.get(TAG.offsets) ?? [];
    const perStrip = Math.min(one(TAG.rowsPerStrip, height), height) * width;
    if (offsets.length !== Math.ceil((width * height) / perStrip)) return broken();
    const signed = one(TAG.format, 1) === SIGNED;
    const values = new Float64Array(width * height);
    for (let i = 0; i < values.length; i += 1) {
      const at = offsets[Math.floor(i / perStrip)]! + (i % perStrip) * 2;
      values[i] = signed ? view.getInt16(at, little) : view.getUint16(at, little);
    }
    return { width, height, at: (index) => values[index]! };
  } catch (error) {
    if (error instanceof RangeError) return broken(); // read beyond the end of the file
    throw error;
  }
}

function readDirectory(view: DataView, little: boolean): Map<number, number[]> {
  const start = view.getUint32(4, little);
  const entries = new Map<number, number[]>();
  for (let k = 0; k < view.getUint16(start, little); k += 1) {
    const at = start + 2 + k * ENTRY;
    const size = BYTES_OF[view.getUint16(at + 2, little)];
    const count = view.getUint32(at + 4, little);
    if (size === undefined || count > view.byteLength) continue;
    const from = size * count <= INLINE ? at + 8 : view.getUint32(at + 8, little);
    entries.set(
      view.getUint16(at, little),
      Array.from({ length: count }, (_, i) => {
        const place = from + i * size;
        return size === 1 ? view.getUint8(place) : size === 2 ? view.getUint16(place, little) : view.getUint32(place, little);
      }),
    );
  }
  return entries;
}
