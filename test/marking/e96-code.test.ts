import { describe, expect, test } from 'vitest';
import { decodeMarking } from '../../src/core/marking/decode-marking.ts';
import { E_SERIES } from '../../src/core/marking/e-series.ts';
import { MULTIPLIER_LETTERS } from '../../src/core/marking/multiplier-letter.ts';
import type { Reading } from '../../src/core/marking/reading.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { readingsOf } from './readings-of.ts';
import { PRINTED_CODES } from './series-as-printed.ts';

function byCode(mark: string): readonly Reading[] {
  return readingsOf(mark, 'resistor').filter(({ scheme }) => scheme === 'e96-code');
}

describe('the three-character code of a chip resistor', () => {
  test('has 96 codes, from 01 for 100 to 96 for 976', () => {
    expect(PRINTED_CODES).toHaveLength(96);
    expect(byCode('01A').map(({ value }) => value)).toEqual([100]);
    expect(byCode('96A').map(({ value }) => value)).toEqual([976]);
  });
  test.each(PRINTED_CODES)('%sA is %d Ω, as printed', (code, figures) => {
    expect(byCode(`${code}A`).map(({ value }) => value)).toEqual([figures]);
    expect(E_SERIES.E96[Number(code) - 1]).toBe(figures / 100);
  });
  test('has no code 00 and none from 97', () => {
    for (const mark of ['00A', '97A', '99C']) {
      const decoded = decodeMarking(mark, 'resistor');
      expect(isRefusal(decoded) ? [] : decoded.readings.filter(({ scheme }) => scheme === 'e96-code')).toEqual([]);
    }
  });

  /** Z to F as the learning page prints them for code 01, which is 100. */
  test.each([
    ['Z', 0.1],
    ['Y', 1],
    ['R', 1],
    ['X', 10],
    ['S', 10],
    ['A', 100],
    ['B', 1000],
    ['C', 10_000],
    ['D', 100_000],
    ['E', 1_000_000],
    ['F', 10_000_000],
  ] as const)('01%s is %d Ω', (letter, value) => expect(byCode(`01${letter}`).map((reading) => reading.value)).toEqual([value]));
  test('gives both meanings of H, which tables print differently, and says so', () => {
    const readings = byCode('01H');
    expect(readings.map(({ value }) => value).toSorted((a, b) => a! - b!)).toEqual([1000, 1_000_000_000]);
    expect(readings.every(({ notes }) => notes.includes('multiplier-letter-disputed'))).toBe(true);
  });
  test('says that G stands in one table only', () => {
    const [reading] = byCode('01G');
    expect(reading?.value).toBe(100_000_000);
    expect(reading?.notes).toContain('multiplier-letter-disputed');
    expect(reading?.source.disagrees?.join()).toContain('G');
  });
  test('has thirteen letters', () => expect(Object.keys(MULTIPLIER_LETTERS).toSorted().join('')).toBe('ABCDEFGHRSXYZ'));
  test('goes with 1 %', () => expect(byCode('22C')[0]?.tolerance).toEqual({ minus: 0.01, plus: 0.01, unit: '1' }));
});

describe('the code with the letter first', () => {
  function letterFirst(mark: string): readonly Reading[] {
    return readingsOf(mark, 'resistor').filter(({ scheme }) => scheme === 'letter-first');
  }
  test.each([
    ['C01', 10_000, 0.02],
    ['A24', 910, 0.02],
    ['A25', 100, 0.05],
    ['A48', 910, 0.05],
    ['A49', 100, 0.1],
    ['A60', 820, 0.1],
    ['D18', 510_000, 0.02],
  ] as const)('%s is %d Ω at a share of %d', (mark, value, share) => {
    const readings = letterFirst(mark);
    expect(readings.map((reading) => reading.value)).toEqual([value]);
    expect(readings[0]?.tolerance?.plus).toBe(share);
  });
  test('is graded as remembered', () => expect(letterFirst('C22')[0]?.source.grade).toBe('memory'));
  test('ends at 60', () => expect(isRefusal(decodeMarking('A61'))).toBe(true));
});
