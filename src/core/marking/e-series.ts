import { cite, type Source } from '../source/source.ts';

/**
 * The preferred values of a decade, 1 to below 10, without unit: E3 to E24 with two digits, E48 to E192 with three.
 * The i-th of N values is 10^(i/N), rounded; the values that were kept from older usage are data.
 * Source: IEC 60063:2015 (value lists read in an encyclopaedia's copy; the edition from memory).
 */
export type SeriesName = 'E3' | 'E6' | 'E12' | 'E24' | 'E48' | 'E96' | 'E192';

export const SERIES_SOURCE: Source = cite('iec-60063', 'series E3 to E192', 'secondary', {
  alsoBy: ['an encyclopaedia, article on the E series'],
});

const DECADE = 10;

/** Index in E24 to the value kept from before the rule. IEC 60063. */
const KEPT_IN_E24: Readonly<Record<number, number>> = { 10: 2.7, 11: 3, 12: 3.3, 13: 3.6, 14: 3.9, 15: 4.3, 16: 4.7, 22: 8.2 };
/** The one value of E192 that the rule misses (it gives 9.19). IEC 60063. */
const KEPT_IN_E192: Readonly<Record<number, number>> = { 185: 9.2 };

function generate(count: number, digitsAfterPoint: number, kept: Readonly<Record<number, number>> = {}): readonly number[] {
  return Array.from({ length: count }, (_, index) => {
    const known = kept[index];
    return known ?? Number(Math.exp((index / count) * Math.log(DECADE)).toFixed(digitsAfterPoint));
  });
}

function everyNth(values: readonly number[], step: number): readonly number[] {
  return values.filter((_, index) => index % step === 0);
}

const E24 = generate(24, 1, KEPT_IN_E24);

/** E3, E6 and E12 are every eighth, fourth and second value of E24. */
export const E_SERIES: Readonly<Record<SeriesName, readonly number[]>> = {
  E3: everyNth(E24, 8),
  E6: everyNth(E24, 4),
  E12: everyNth(E24, 2),
  E24,
  E48: generate(48, 2),
  E96: generate(96, 2),
  E192: generate(192, 2, KEPT_IN_E192),
};

/** The coarsest series that holds a positive value in any decade, or null. The value must be exact to its digits, as every reading is. */
export function findSeries(value: number): SeriesName | null {
  if (!(value > 0) || !Number.isFinite(value)) return null;
  const inDecade = Number(value.toExponential().split('e')[0]);
  const found = Object.entries(E_SERIES).find(([, values]) => values.includes(inDecade));
  return found === undefined ? null : (found[0] as SeriesName);
}
