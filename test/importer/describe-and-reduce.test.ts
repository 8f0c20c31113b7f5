import { expect, it } from 'vitest';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { describe as describeFile } from '../../src/importer/describe.ts';
import { readInstrumentFile } from '../../src/importer/read-instrument-file.ts';
import { MOST_ROWS, reduceTable } from '../../src/importer/reduce.ts';

function read(text: string) {
  const file = readInstrumentFile(new TextEncoder().encode(text));
  if (isRefusal(file)) throw new Error(file.expected);
  return file;
}

it('a description says of every column what stands in it, in the file’s own units', () => {
  const said = describeFile(read('Time (ms);Current (mA);Mode\n0,5;-250,5;CC\n1,0;OL;\n1,5;125,25;CV\n'));
  expect(said).toMatchObject({
    encoding: 'utf-8',
    separator: 'semicolon',
    decimalMark: 'comma',
    headerRows: [1],
    unitRow: null,
    rows: 3,
    timeStepS: 0.0005,
    doubts: [],
  });
  expect(said.columns[0]).toMatchObject({ name: 'Time', unit: 'ms', count: 3, first: 0.5, last: 1.5, min: 0.5, max: 1.5, mean: 1 });
  expect(said.columns[1]).toMatchObject({
    unit: 'mA',
    count: 2,
    missing: { count: 1, reasons: { overload: 1 } },
    min: -250.5,
    max: 125.25,
    mean: -62.625,
  });
  expect(said.columns[2]).toMatchObject({ kind: 'text', count: 2, first: 'CC', last: 'CV', mean: null });
});

it('a description is plain data, with no time step where there is none', () => {
  const said = describeFile(read('Voltage;Current (A)\n1,5;0,25\n1,25;0,5\n'));
  expect(JSON.parse(JSON.stringify(said))).toEqual(said);
  expect('timeStepS' in said).toBe(false);
  expect(said.doubts.map(({ code, columns }) => [code, columns])).toEqual([['unit:0', [0]]]);
});

it('the mean of many numbers loses nothing on the way', () => {
  const said = describeFile(read(`Voltage (V);Step\n${'0.1;1\n'.repeat(10_000)}`));
  expect(said.columns[0]!.mean).toBe(0.1);
});

it('a long table keeps every peak in at most two thousand rows', () => {
  const rows = 12_345;
  const file = read(
    `Time (s);Voltage (V)\n${Array.from({ length: rows }, (_, i) => `${i / 8};${i === 7777 ? 99.5 : i === 4444 ? 'OL' : Math.sin(i)}`).join('\n')}`,
  );
  const table = reduceTable(file);
  expect(table.reduced).toBe(true);
  expect(table.rows).toBe(MOST_ROWS);
  const voltage = table.columns[1]!;
  expect(Math.max(...voltage.max)).toBe(99.5);
  expect(voltage.count.reduce((sum, n) => sum + n, 0)).toBe(rows - 1);
  for (let bin = 0; bin < table.rows; bin++) {
    expect(voltage.min[bin]).toBeLessThanOrEqual(voltage.mean[bin]!);
    expect(voltage.mean[bin]).toBeLessThanOrEqual(voltage.max[bin]!);
  }
  expect(table.columns[0]!.min[0]).toBe(0);
  expect(table.columns[0]!.max[MOST_ROWS - 1]).toBe((rows - 1) / 8);
});

it('a short table stays as it is', () => {
  const file = read('Time (s);Voltage (V)\n0.5;1.5\n1.5;OL\n2.5;1.25\n');
  const table = reduceTable(file);
  expect(table.reduced).toBe(false);
  for (const side of ['min', 'max', 'mean'] as const) expect([...table.columns[1]![side]]).toEqual([1.5, Number.NaN, 1.25]);
});
