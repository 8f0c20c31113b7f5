import { describe, expect, test } from 'vitest';
import { readingsOf } from './readings-of.ts';

/** Tolerance colour, per cent, and how well it is known. */
const TOLERANCE_BANDS = [
  ['brown', 1, 'secondary'],
  ['red', 2, 'secondary'],
  ['orange', 0.05, 'memory'],
  ['yellow', 0.02, 'memory'],
  ['green', 0.5, 'secondary'],
  ['blue', 0.25, 'secondary'],
  ['violet', 0.1, 'secondary'],
  ['grey', 0.01, 'memory'],
  ['gold', 5, 'secondary'],
  ['silver', 10, 'secondary'],
] as const;

/** Colour of the sixth band, millionths per kelvin. */
const COEFFICIENT_BANDS = [
  ['black', 250],
  ['brown', 100],
  ['red', 50],
  ['orange', 15],
  ['yellow', 25],
  ['green', 20],
  ['blue', 10],
  ['violet', 5],
  ['grey', 1],
] as const;

const RESISTOR_LETTERS = [
  ['L', 0.01],
  ['P', 0.02],
  ['W', 0.05],
  ['B', 0.1],
  ['C', 0.25],
  ['D', 0.5],
  ['F', 1],
  ['G', 2],
  ['H', 3],
  ['J', 5],
  ['K', 10],
  ['M', 20],
  ['N', 30],
] as const;

const LOPSIDED_LETTERS = [
  ['Q', 10, 30],
  ['T', 10, 50],
  ['S', 20, 50],
  ['Z', 20, 80],
] as const;

const share = (perCent: number): number => Number(`${perCent}e-2`);

describe('one band', () => {
  test.each(TOLERANCE_BANDS)('%s as tolerance is %d %%, known as %s', (colour, perCent, grade) => {
    const reading = readingsOf(`orange orange black brown ${colour}`, 'resistor').find(({ value }) => value === 3300);
    expect(reading?.tolerance).toEqual({ minus: share(perCent), plus: share(perCent), unit: '1' });
    expect(reading?.source.grade).toBe(grade);
  });
  test.each(COEFFICIENT_BANDS)('%s as temperature coefficient is %d millionths per kelvin', (colour, millionths) => {
    const reading = readingsOf(`orange orange black brown brown ${colour}`, 'resistor').find(({ value }) => value === 3300);
    expect(reading?.temperatureCoefficient).toBe(Number(`${millionths}e-6`));
  });
  test.each([
    ['gold', 5],
    ['silver', 10],
    ['black', 20],
  ] as const)('%s as tolerance of an inductor is %d %%', (colour, perCent) => {
    const reading = readingsOf(`orange orange brown ${colour}`, 'inductor').find(({ value }) => value === 330e-6);
    expect(reading?.tolerance).toEqual({ minus: share(perCent), plus: share(perCent), unit: '1' });
  });
});

describe('one letter', () => {
  test.each(RESISTOR_LETTERS)('%s behind a resistor’s value is %d %%, from memory', (letter, perCent) => {
    const [reading] = readingsOf(`4K7${letter}`, 'resistor');
    expect(reading?.tolerance).toEqual({ minus: share(perCent), plus: share(perCent), unit: '1' });
    expect(reading?.source.grade).toBe('memory');
  });
  test.each(LOPSIDED_LETTERS)('%s behind a capacitor’s digits is −%d +%d %%', (letter, minus, plus) => {
    expect(readingsOf(`103${letter}`, 'capacitor')[0]?.tolerance).toEqual({ minus: share(minus), plus: share(plus), unit: '1' });
  });
  test.each([
    ['H', 3],
    ['N', 30],
  ] as const)('%s behind a capacitor’s digits is %d %%, from memory', (letter, perCent) => {
    const reading = readingsOf(`103${letter}`, 'capacitor').find(({ scheme }) => scheme === 'capacitor-digits');
    expect(reading?.tolerance).toEqual({ minus: share(perCent), plus: share(perCent), unit: '1' });
    expect(reading?.source.grade).toBe('memory');
  });
  test('of a capacitor changes its meaning at 10 pF by the rule of size', () => {
    const noted = (mark: string): boolean => readingsOf(mark, 'capacitor')[0]!.notes.includes('tolerance-letter-depends-on-size');
    expect([noted('9p1C'), noted('10pC'), noted('11pC')]).toEqual([false, true, true]);
    expect([noted('9p1G'), noted('10pG'), noted('11pG')]).toEqual([true, false, false]);
  });
  test.each([
    ['1p0', 1e-12],
    ['1n0', 1e-9],
    ['1u0', 1e-6],
    ['1µ0', 1e-6],
    ['1m0', 1e-3],
    ['1F0', 1],
  ] as const)('at the point of %s makes %d F', (mark, value) =>
    expect(readingsOf(mark, 'capacitor').map((reading) => reading.value)).toContain(value),
  );
  test.each([
    ['1R0', 1],
    ['1K0', 1e3],
    ['1M0', 1e6],
    ['1G0', 1e9],
    ['1T0', 1e12],
  ] as const)('at the point of %s makes %d Ω', (mark, value) =>
    expect(readingsOf(mark, 'resistor').map((reading) => reading.value)).toEqual([value]),
  );
});
