import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { E_SERIES } from '../../src/core/marking/e-series.ts';
import type { Part, SchemeSlug } from '../../src/core/marking/reading.ts';
import { FEW, SEED } from '../property/seed.ts';
import { readingsOf } from './readings-of.ts';

const RUN = { seed: SEED, numRuns: FEW };

/** The values a scheme gives for a mark it wrote. */
function valuesBy(scheme: SchemeSlug, mark: string, part: Part): (number | null)[] {
  return readingsOf(mark, part)
    .filter((reading) => reading.scheme === scheme)
    .map(({ value }) => value);
}

const letterOf = fc.constantFrom(['R', 0] as const, ['K', 3] as const, ['M', 6] as const, ['G', 9] as const);
const seriesValue = fc.constantFrom(...E_SERIES.E24, ...E_SERIES.E96);

describe('a value that is written as a code', () => {
  test('comes back from the letter and digit code', () => {
    fc.assert(
      fc.property(seriesValue, fc.integer({ min: 0, max: 2 }), letterOf, (inDecade, shift, [letter, exponent]) => {
        const plain = Number(`${inDecade}e${shift}`);
        const [whole = '', decimals = ''] = String(plain).split('.');
        const mark = `${whole}${letter}${decimals}`;
        expect(valuesBy('letter-at-point', mark, 'resistor'), mark).toEqual([Number(`${plain}e${exponent}`)]);
      }),
      RUN,
    );
  });
  test('comes back from the capacitors’ letter code', () => {
    const farad = fc.constantFrom(['p', -12] as const, ['n', -9] as const, ['u', -6] as const, ['µ', -6] as const);
    fc.assert(
      fc.property(fc.constantFrom(...E_SERIES.E24), fc.integer({ min: 0, max: 2 }), farad, (inDecade, shift, [letter, exponent]) => {
        const plain = Number(`${inDecade}e${shift}`);
        const [whole = '', decimals = ''] = String(plain).split('.');
        expect(valuesBy('capacitor-letter', `${whole}${letter}${decimals}`, 'capacitor')).toEqual([Number(`${plain}e${exponent}`)]);
      }),
      RUN,
    );
  });
  test('comes back from three digits', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 99 }), fc.integer({ min: 0, max: 9 }), (figures, zeros) => {
        expect(valuesBy('three-digit', `${figures}${zeros}`, 'resistor')).toEqual([Number(`${figures}e${zeros}`)]);
      }),
      RUN,
    );
  });
  test('comes back from four digits', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 999 }), fc.integer({ min: 0, max: 9 }), (figures, zeros) => {
        expect(valuesBy('four-digit', `${figures}${zeros}`, 'resistor')).toEqual([Number(`${figures}e${zeros}`)]);
      }),
      RUN,
    );
  });
  test('comes back from the code of E96', () => {
    const multiplier = fc.constantFrom(
      ...([
        ['Z', -3],
        ['Y', -2],
        ['X', -1],
        ['A', 0],
        ['B', 1],
        ['C', 2],
        ['D', 3],
        ['E', 4],
        ['F', 5],
      ] as const),
    );
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 95 }), multiplier, (index, [letter, exponent]) => {
        const mark = `${String(index + 1).padStart(2, '0')}${letter}`;
        expect(valuesBy('e96-code', mark, 'resistor'), mark).toEqual([Number(`${E_SERIES.E96[index]}e${exponent + 2}`)]);
      }),
      RUN,
    );
  });
  test('comes back from a capacitor’s digits in picofarad', () => {
    fc.assert(
      fc.property(fc.constantFrom(...E_SERIES.E24), fc.integer({ min: -1, max: 7 }), (inDecade, decade) => {
        // decade of the value in pF, 0 meaning 1 to 9.1 pF; the third digit counts from tens, and 9 and 8 stand below it
        const third = decade === -1 ? 8 : decade === 0 ? 9 : decade - 1;
        const mark = `${Math.round(inDecade * 10)}${third}`;
        expect(valuesBy('capacitor-digits', mark, 'capacitor'), mark).toEqual([Number(`${inDecade}e${decade - 12}`)]);
      }),
      RUN,
    );
  });
  test('comes back from an inductor’s digits in microhenry', () => {
    fc.assert(
      fc.property(fc.constantFrom(...E_SERIES.E24), fc.integer({ min: 0, max: 4 }), (inDecade, zeros) => {
        expect(valuesBy('inductor-digits', `${Math.round(inDecade * 10)}${zeros}`, 'inductor')).toEqual([
          Number(`${inDecade}e${zeros + 1 - 6}`),
        ]);
      }),
      RUN,
    );
  });
});
