import { describe, expect, test } from 'vitest';
import { E_SERIES, findSeries, SERIES_SOURCE, type SeriesName } from '../../src/core/marking/e-series.ts';
import { readingsOf } from './readings-of.ts';
import { PRINTED_SERIES } from './series-as-printed.ts';

const COUNTS: readonly (readonly [SeriesName, number])[] = [
  ['E3', 3],
  ['E6', 6],
  ['E12', 12],
  ['E24', 24],
  ['E48', 48],
  ['E96', 96],
  ['E192', 192],
];
const LAST: readonly (readonly [SeriesName, number])[] = [
  ['E3', 4.7],
  ['E6', 6.8],
  ['E12', 8.2],
  ['E24', 9.1],
  ['E48', 9.53],
  ['E96', 9.76],
  ['E192', 9.88],
];

/** The rule alone, by repeated multiplication in 30-digit whole numbers instead of an exponential. */
function byRule(index: number, count: number, digits: number): number {
  const scale = 10n ** 2n * (digits === 1 ? 1n : 10n);
  // smallest whole h with (h / scale)^count >= 10^index, by counting up; then rounded to the digits
  const reached = (h: bigint): boolean => power(h, count) >= power(10n, index) * power(scale, count);
  let low = scale;
  let high = scale * 10n;
  while (low < high) {
    const middle = (low + high) / 2n;
    if (reached(middle)) high = middle;
    else low = middle + 1n;
  }
  const step = scale / (digits === 1 ? 10n : 100n);
  return Number((low + step / 2n - 1n) / step) / (digits === 1 ? 10 : 100);
}

function power(base: bigint, exponent: number): bigint {
  let result = 1n;
  for (let left = 0; left < exponent; left += 1) result *= base;
  return result;
}

describe('the preferred values of a decade', () => {
  test.each(COUNTS)('%s has %d, rising from 1 and each once', (name, count) => {
    const values = E_SERIES[name];
    expect(values).toHaveLength(count);
    expect(values[0]).toBe(1);
    expect(values.every((value, index) => index === 0 || value > values[index - 1]!)).toBe(true);
  });
  test.each(LAST)('%s ends with %d', (name, last) => expect(E_SERIES[name].at(-1)).toBe(last));
  test.each(COUNTS)('%s equals the printed list value by value', (name) => expect(E_SERIES[name]).toEqual(PRINTED_SERIES[name]));
  test('the 186th value of E192 is 9.20, where the rule gives 9.19', () => {
    expect(E_SERIES.E192[185]).toBe(9.2);
    expect(byRule(185, 192, 2)).toBe(9.19);
  });
  test('E24 keeps eight values that the rule would not give', () => {
    const kept = E_SERIES.E24.flatMap((value, index) => (value === byRule(index, 24, 1) ? [] : [[value, byRule(index, 24, 1)]]));
    expect(kept).toEqual([
      [2.7, 2.6],
      [3, 2.9],
      [3.3, 3.2],
      [3.6, 3.5],
      [3.9, 3.8],
      [4.3, 4.2],
      [4.7, 4.6],
      [8.2, 8.3],
    ]);
  });
  test.each([
    ['E48', 48],
    ['E96', 96],
  ] as const)('%s follows the rule without exception', (name, count) => {
    expect(E_SERIES[name]).toEqual(Array.from({ length: count }, (_, index) => byRule(index, count, 2)));
  });
  test('E48 is every second value of E96, which is every second of E192', () => {
    expect(E_SERIES.E96.filter((_, index) => index % 2 === 0)).toEqual(E_SERIES.E48);
    expect(E_SERIES.E192.filter((_, index) => index % 2 === 0)).toEqual(E_SERIES.E96);
  });
  test('name the standard they stand in', () => expect(SERIES_SOURCE.publication).toContain('IEC 60063'));
});

describe('a value', () => {
  test.each([
    [4.7e-9, 'E3'],
    [15, 'E6'],
    [1_800_000, 'E12'],
    [0.24, 'E24'],
    [1050, 'E48'],
    [49.9, 'E96'],
    [920, 'E192'],
  ] as const)('%d stands in %s and in no coarser series', (value, series) => expect(findSeries(value)).toBe(series));
  test.each([47_300, 9.19, 0, -4.7, Number.NaN, Number.POSITIVE_INFINITY])('%d stands in none', (value) =>
    expect(findSeries(value)).toBeNull(),
  );
  test('outside every series is noted on its reading', () => {
    expect(readingsOf('47K3')[0]).toMatchObject({ series: null, notes: ['in-no-series'] });
    expect(readingsOf('47K5')[0]).toMatchObject({ series: 'E96', notes: [] });
  });
});
