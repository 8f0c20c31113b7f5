import sharp, { type TiffOptions } from 'sharp';
import { describe, expect, it } from 'vitest';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { type InstrumentFile, readInstrumentFile, type Settled } from '../../src/importer/read-instrument-file.ts';
import { withoutPlace } from '../../src/server/photo/without-place.ts';

const WIDTH = 20;
const HEIGHT = 16;
/** A warm spot on a board at room temperature, invented; tenths of a kelvin. */
const celsius = (x: number, y: number): number => 300 + Math.round(450 * Math.exp(-((x - 12) ** 2 + (y - 5) ** 2) / 18));
const tenths = (x: number, y: number): string => (celsius(x, y) / 10).toFixed(1);
const field = (separator: string, cell = tenths): string[] =>
  Array.from({ length: HEIGHT }, (_, y) => Array.from({ length: WIDTH }, (_, x) => cell(x, y)).join(separator));
const read = (bytes: Uint8Array | string, settled: Settled = {}): InstrumentFile => {
  const file = readInstrumentFile(typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes, settled);
  if (isRefusal(file)) throw new Error(sentence(file));
  return file;
};
const codes = (file: InstrumentFile): string[] => file.doubts.map(({ code }) => code);
const spot = (file: InstrumentFile): number => file.columns[12]!.values[5]!;

describe('a field of temperatures', () => {
  it.each([
    ['commas', ','],
    ['tabs', '\t'],
    ['semicolons', ';'],
  ])('with %s between its numbers is read whole, and its unit is asked', (_, separator) => {
    const file = read(`${field(separator).join('\n')}\n`);
    expect(file).toMatchObject({ shape: 'matrix', rows: HEIGHT });
    expect(file.columns).toHaveLength(WIDTH);
    expect(spot(file)).toBe(75);
    expect(codes(file)).toEqual(['unit']);
  });

  it('below a preamble that states the unit is read without a question', () => {
    const file = read(`Emissivity: 0.95\nUnit: °C\n${field(',').join('\n')}\n`);
    expect(codes(file)).toEqual([]);
    expect([file.columns[0]!.unit, spot(file)]).toEqual(['°C', 75]);
  });

  it('with decimal commas is the same picture', () => {
    const file = read(`${field(';', (x, y) => tenths(x, y).replace('.', ',')).join('\n')}\n`, { unit: '°C' });
    expect(spot(file)).toBe(75);
  });

  it('in °F says so and is not taken for °C', () => {
    expect(read(`Unit: °F\n${field(',').join('\n')}\n`).columns[0]!.unit).toBe('°F');
  });
});

describe('the scale drawn beside a picture', () => {
  const bar = (k: number, of: number): string => (30 + (45 * k) / (of - 1)).toFixed(1);
  const beside = field(',').map((row, y) => `${row},${bar(HEIGHT - 1 - y, HEIGHT)}`);
  const below = [...field(','), Array.from({ length: WIDTH }, (_, x) => bar(x, WIDTH)).join(',')];

  it.each([
    ['column', beside, WIDTH, HEIGHT],
    ['row', below, WIDTH, HEIGHT],
  ])('as a %s is asked about, and left out when it is said to be one', (_, rows, width, height) => {
    const text = `${rows.join('\n')}\n`;
    expect(codes(read(text, { unit: '°C' }))).toEqual(['scale-beside']);
    const file = read(text, { unit: '°C', 'scale-beside': 'scale' });
    expect([file.columns.length, file.rows]).toEqual([width, height]);
    expect(spot(file)).toBe(75);
    const kept = read(text, { unit: '°C', 'scale-beside': 'readings' });
    expect(kept.columns.length * kept.rows).toBeGreaterThan(WIDTH * HEIGHT);
  });

  it('is not seen in a surface that warms from one side to the other', () => {
    const slope = field(',', (x, y) => (25 + x + 0.3 * Math.sin(x + y)).toFixed(1));
    expect(codes(read(`${slope.join('\n')}\n`, { unit: '°C' }))).toEqual([]);
  });
});

/** Written by a library of its own: what a 16-bit TIFF is does not rest on our reader. */
function tiff(options: TiffOptions, cell = celsius): Promise<Buffer> {
  const pixels = Uint16Array.from({ length: WIDTH * HEIGHT }, (_, i) => cell(i % WIDTH, Math.floor(i / WIDTH)));
  return sharp(pixels, { raw: { width: WIDTH, height: HEIGHT, channels: 1 } })
    .toColourspace('grey16')
    .tiff(options)
    .toBuffer();
}

describe('a TIFF with 16 bits per pixel', () => {
  it('is the same field of numbers that another program wrote', async () => {
    const file = read(await tiff({ compression: 'none' }));
    expect(file).toMatchObject({ shape: 'matrix', rows: HEIGHT, encoding: 'tiff' });
    for (let x = 0; x < WIDTH; x += 1) for (let y = 0; y < HEIGHT; y += 1) expect(file.columns[x]!.values[y]).toBe(celsius(x, y));
    expect(codes(file)).toEqual(['unit']);
  });

  it('keeps its numbers when everything but its pixels is taken out of it', async () => {
    const clean = await withoutPlace(await tiff({ compression: 'lzw' }), 'image/tiff');
    expect(spot(read(clean))).toBe(750);
  });

  it('that is packed, in colours or cut short is refused by what it is', async () => {
    const refusal = (bytes: Uint8Array): string => {
      const file = readInstrumentFile(bytes);
      return isRefusal(file) ? file.code : 'read';
    };
    expect(refusal(await tiff({ compression: 'lzw' }))).toBe('tiff-packed');
    const colours = await sharp({ create: { width: 8, height: 8, channels: 3, background: '#804020' } })
      .tiff({ compression: 'none' })
      .toBuffer();
    expect(refusal(colours)).toBe('tiff-colours');
    const whole = await tiff({ compression: 'none' });
    for (const length of [8, 20, 100, whole.length - 40]) expect(refusal(whole.subarray(0, length))).toBe('tiff-broken');
  });
});
