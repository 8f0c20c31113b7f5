import { expect, it } from 'vitest';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { describe as describeFile } from '../../src/importer/describe.ts';
import { readInstrumentFile } from '../../src/importer/read-instrument-file.ts';
import { Dice, encode } from './layout-grammar.ts';

const ROWS = 130_000; // more than two million bytes: read straight from the bytes when plain

function makeRows(seed: number): string[] {
  const dice = new Dice(seed);
  return Array.from({ length: ROWS }, (_, i) => `${(i * 0.0005).toFixed(4)},${((dice.next() - 0.5) * 10).toFixed(6)},`);
}

function read(text: string, encoding: 'utf-8' | 'utf-16le' | 'latin-1') {
  const file = readInstrumentFile(encode(text, encoding));
  if (isRefusal(file)) throw new Error(file.expected);
  return file;
}

const HEADING = 'Device,Bench recorder\nRun,7\nX,CH1\nSecond,Volt\n';

it('a long plain file reads the same straight from its bytes and by the general path', () => {
  const text = `${HEADING}${makeRows(1).join('\r\n')}`;
  const direct = read(text, 'utf-8');
  const general = read(text, 'utf-16le');
  expect({ ...describeFile(direct), encoding: '', lineEnd: '' }).toEqual({ ...describeFile(general), encoding: '', lineEnd: '' });
  for (const [i, column] of direct.columns.entries()) expect(column.values).toEqual(general.columns[i]!.values);
  expect(direct.timeStepS).toBe(0.0005);
  expect(direct.preamble).toEqual({ Device: 'Bench recorder', Run: '7' });
});

it.each([
  ['an overload', '64.9995,OL,'],
  ['a huge number', '64.9995,9.9E37,'],
  ['a quoted number', '"64.9995","1.5",'],
  ['a blank cell', '64.9995,,'],
  ['a blank line', ''],
  ['a row with a word', 'Average,1.5,'],
  ['one cell too many', '64.9995,1.5,2.5'],
])('%s far down a long file is found', (_, row) => {
  const rows = makeRows(2);
  rows[ROWS - 10] = row;
  const text = HEADING + rows.join('\n');
  const direct = read(text, 'utf-8');
  const general = read(text, 'utf-16le');
  expect({ ...describeFile(direct), encoding: '' }).toEqual({ ...describeFile(general), encoding: '' });
  if (!row.startsWith('"')) {
    const noticed = direct.doubts.length > 0 || direct.columns[1]!.missing.count > 0 || Object.keys(direct.skippedRows).length > 0;
    expect(noticed).toBe(true);
  }
});
