import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { readFastColumns } from '../../src/importer/fast-columns.ts';

const SEED = 77;
const encoder = new TextEncoder();

function cut(bytes: Uint8Array, places: readonly number[]): Uint8Array[] {
  const edges = [0, ...places.map((place) => place % (bytes.length + 1)), bytes.length].sort((a, b) => a - b);
  return edges.slice(1).map((edge, i) => bytes.subarray(edges[i], edge));
}

it('rows come out the same wherever the bytes are cut into chunks', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer()), { minLength: 1, maxLength: 40 }),
      fc.array(fc.nat(), { maxLength: 12 }),
      fc.constantFrom('\n', '\r\n'),
      fc.boolean(),
      fc.boolean(),
      (pairs, places, lineEnd, isClosed, isSized) => {
        const text = `a;b${lineEnd}${pairs.map(([a, b]) => `${a};${b}`).join(lineEnd)}${isClosed ? lineEnd : ''}`;
        const bytes = encoder.encode(text);
        const sized = isSized ? { totalBytes: bytes.length } : {};
        const table = readFastColumns(cut(bytes, places), { separator: 'semicolon', columns: 2, skipLines: 1, ...sized });
        expect(isRefusal(table)).toBe(false);
        if (isRefusal(table)) return;
        expect([...table.columns[0]!]).toEqual(pairs.map(([a]) => Number(String(a))));
        expect([...table.columns[1]!]).toEqual(pairs.map(([, b]) => b));
      },
    ),
    { numRuns: 2000, seed: SEED },
  );
});

it('tables longer than the first guess grow without losing a row', () => {
  const rows = 150_000;
  const text = Array.from({ length: rows }, (_, i) => `${i}\t${-i / 8}`).join('\n');
  for (const totalBytes of [undefined, text.length, 10]) {
    const table = readFastColumns([encoder.encode(text)], {
      separator: 'tab',
      columns: 2,
      ...(totalBytes === undefined ? {} : { totalBytes }),
    });
    if (isRefusal(table)) throw new Error('refused');
    expect(table.rows).toBe(rows);
    expect(table.columns[1]![rows - 1]).toBe(-(rows - 1) / 8);
    expect(table.columns[0]!.every((value, i) => value === i)).toBe(true);
  }
});

it.each([
  ['1,2\n3,OL\n', 'line 2'],
  ['1,2\n3\n', 'line 2'],
  ['1,2,3\n', 'line 1'],
  ['1,2\n\n"3",4\n', 'line 3'],
  ['1,2\n3,,4\n', 'line 2'],
  ['1 2,3\n', 'line 1'],
])('a row that is not plain is refused with its line: %j', (text, place) => {
  const table = readFastColumns([encoder.encode(text)], { separator: 'comma', columns: 2 });
  expect(isRefusal(table) && table.code).toBe('not-plain');
  expect(isRefusal(table) && table.place).toBe(place);
});

it('a stream without a single line end is refused before it fills the memory', () => {
  function* endless(): Generator<Uint8Array> {
    for (let i = 0; i < 5000; i++) yield new Uint8Array(1024).fill(0x31);
    throw new Error('read on');
  }
  const table = readFastColumns(endless(), { separator: 'comma', columns: 2 });
  expect(isRefusal(table) && table.code).toBe('not-plain');
});
