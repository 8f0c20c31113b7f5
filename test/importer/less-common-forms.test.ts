import { describe, expect, it } from 'vitest';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { type InstrumentFile, readInstrumentFile, type Settled } from '../../src/importer/read-instrument-file.ts';
import { toTimes } from '../../src/importer/to-times.ts';

function read(text: string, settled: Settled = {}): InstrumentFile {
  const file = readInstrumentFile(new TextEncoder().encode(text), settled);
  if (isRefusal(file)) throw new Error(sentence(file));
  return file;
}
const codes = (file: InstrumentFile): string[] => file.doubts.map((doubt) => doubt.code);
const values = (file: InstrumentFile, column: number): number[] => [...file.columns[column]!.values];
const units = (file: InstrumentFile): (string | null)[] => file.columns.map(({ unit }) => unit);

describe('a bar between the cells', () => {
  it('separates like a semicolon, with blanks around it and commas in the numbers', () => {
    const file = read('Time (s) | Voltage (V)\n0,5 | 5,02\n1,5 | 4,98\n');
    expect(file.separator).toBe('bar');
    expect(codes(file)).toEqual([]);
    expect(values(file, 1)).toEqual([5.02, 4.98]);
  });

  it('is a sign like others in a name', () => {
    const file = read('Time (s);|V| (V)\n0;5.02\n1;4.98\n');
    expect(file.separator).toBe('semicolon');
    expect(values(file, 1)).toEqual([5.02, 4.98]);
  });
});

describe('thousands set off by an apostrophe', () => {
  it('are one number, with a point or a comma behind them', () => {
    expect(values(read("Time (s);Power (mW)\n0;1'234.5\n1;12'345'678\n"), 1)).toEqual([1234.5, 12345678]);
    expect(values(read('Time (s);Power (mW)\n0;1’234,5\n1;987,25\n'), 1)).toEqual([1234.5, 987.25]);
  });

  it("1'23 is no number: the column is asked about", () => {
    expect(codes(read("Time (s);Power (mW)\n0;5.5\n1;1'23\n2;5.25\n"))).toContain('text-cells:1');
  });
});

describe('a letter that scales', () => {
  it('multiplies where the heading names the bare unit', () => {
    const file = read('Time (s);Resistance (Ω)\n0;1.5k\n1;820\n2;2M\n');
    expect(codes(file)).toEqual([]);
    expect(values(file, 1)).toEqual([1500, 820, 2e6]);
  });

  it('beside a unit with a prefix is asked about, and read as the person says', () => {
    const text = 'Time (s);Resistance (kΩ)\n0;1.5k\n1;0.82\n';
    const file = read(text);
    expect(codes(file)).toEqual(['scale-letter:1']);
    expect(file.columns[1]!.usable).toBe(false);
    expect(values(read(text, { 'scale-letter:1': 'multiplies' }), 1)).toEqual([1500, 0.82]);
    expect(values(read(text, { 'scale-letter:1': 'in-its-place' }), 1)).toEqual([1.5, 0.82]);
  });

  it('small m is a metre as often as a thousandth, and a temperature has no thousands: neither is read unasked', () => {
    expect(codes(read('Time (s);Voltage (V)\n0;5m\n1;4.5\n'))).not.toEqual([]);
    expect(codes(read('Time (s);Case (°C)\n0;1.5k\n1;40\n'))).toEqual(['scale-letter:1']);
  });
});

describe('a unit in a column of its own', () => {
  it('belongs to the numbers left of it; another prefix is brought to the first', () => {
    const file = read('Time (s);Voltage;Unit;Current;Unit\n0;5.02;V;1.2;A\n1;980;mV;250;mA\n');
    expect(codes(file)).toEqual([]);
    expect(units(file)).toEqual(['s', 'V', null, 'A', null]);
    expect(values(file, 1)).toEqual([5.02, 0.98]);
    expect(values(file, 3)).toEqual([1.2, 0.25]);
  });

  it('needs no name, and may be blank where the reading is missing', () => {
    const file = read('Time (s);Voltage;\n0;5.02;V\n1;;\n2;4.98;V\n');
    expect(units(file)[1]).toBe('V');
    expect(values(file, 1)).toEqual([5.02, Number.NaN, 4.98]);
  });

  it('is asked for where the column is of two kinds, leaves a number without, or is no column of units', () => {
    expect(codes(read('Time (s);Reading;Unit\n0;5.02;V\n1;1.2;A\n'))).toContain('unit:1');
    expect(codes(read('Time (s);Reading;Unit\n0;5.02;V\n1;4.98;\n2;4.9;V\n'))).toContain('unit:1');
    expect(codes(read('Time (s);Reading;Mode\n0;5.02;V\n1;4.98;V\n'))).toContain('unit:1');
  });

  it('against the heading is asked about', () => {
    expect(codes(read('Time (s);Voltage (V);Unit\n0;5.02;mV\n1;4.98;mV\n'))).toContain('unit:1');
  });
});

describe('hours, minutes and seconds in three columns', () => {
  const HEAD = 'Hours;Minutes;Seconds;Voltage (V)\n';
  const times = (file: InstrumentFile): number[] => [...(toTimes(file) ?? [])];

  it('are one time', () => {
    const file = read(`${HEAD}0;59;58;5.01\n0;59;59;5.02\n1;0;0;5.03\n1;0;1;5.04\n`);
    expect(codes(file)).toEqual([]);
    expect(file.timeBase).toEqual({ kind: 'parts', hours: 0, minutes: 1, seconds: 2 });
    expect(times(file)).toEqual([3598, 3599, 3600, 3601]);
    expect(file.timeStepS).toBe(1);
  });

  it('each telling the whole time in its own unit are not put together', () => {
    const file = read(`${HEAD}0.5;30;1800;5.01\n1;60;3600;5.02\n1.5;90;5400;5.03\n`);
    expect(file.timeBase).toMatchObject({ kind: 'column' });
    expect(times(file)).toEqual([1800, 3600, 5400]);
  });

  it('that go back are no plain time', () => {
    expect(read(`${HEAD}0;59;58;5.01\n0;59;59;5.02\n0;0;0;5.03\n`).timeBase).not.toMatchObject({ kind: 'parts' });
  });
});
