import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeMarking } from '../../src/core/marking/decode-marking.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { FEW, SEED } from '../property/seed.ts';
import { meaningsOf, readingsOf, settledBy } from './readings-of.ts';

const RUN = { seed: SEED, numRuns: FEW };

const DIGITS = ['black', 'brown', 'red', 'orange', 'yellow', 'green', 'blue', 'violet', 'grey', 'white'] as const;

describe('colour bands', () => {
  test('gold as last band settles the direction', () => {
    expect(meaningsOf('yellow violet red gold', 'resistor')).toEqual(['resistor 4700']);
    expect(readingsOf('yellow violet red gold', 'resistor')[0]?.tolerance?.plus).toBe(0.05);
    expect(settledBy('yellow violet red gold', 'resistor')).toEqual([]);
  });
  test('typed from the other end they are read the same', () => {
    expect(meaningsOf('gold red violet yellow', 'resistor')).toEqual(['resistor 4700']);
  });
  test('without a tolerance colour that settles it, both directions are given', () => {
    const readings = readingsOf('yellow violet black brown brown');
    expect(
      readings.map(({ value, tolerance, notes }) => [value, tolerance?.plus, notes.find((note) => note.startsWith('read-from'))]),
    ).toEqual([
      [4700, 0.01, 'read-from-first-band'],
      [1_100_000_000, 0.0002, 'read-from-last-band'],
    ]);
    expect(settledBy('yellow violet black brown brown')).toEqual(['band-spacing', 'measure-resistance']);
  });
  test('that read the same from both ends have one meaning', () => {
    expect(meaningsOf('brown red red brown')).toEqual(['resistor 1200']);
  });
  test('cannot begin with black', () => {
    expect(isRefusal(decodeMarking('black brown red gold'))).toBe(true);
    expect(meaningsOf('green blue black black', 'inductor')).toEqual(['inductor 0.000056']);
  });
  test('one black band is a link', () => expect(meaningsOf('black')).toEqual(['jumper 0']));
  test('six bands end with a temperature coefficient, which is from memory', () => {
    const [reading] = readingsOf('brown black black red brown brown', 'resistor');
    expect(reading).toMatchObject({ value: 10_000, tolerance: { minus: 0.01, plus: 0.01, unit: '1' }, temperatureCoefficient: 100e-6 });
    expect(reading?.source.grade).toBe('memory');
  });
  test('three bands stand for twenty per cent', () => {
    expect(readingsOf('red red brown', 'resistor').map(({ value, tolerance }) => [value, tolerance?.plus])).toEqual([
      [220, 0.2],
      [1200, 0.2],
    ]);
  });
  test('gold and silver divide as multipliers, pink by a thousand', () => {
    expect(meaningsOf('green brown gold gold', 'resistor')).toEqual(['resistor 5.1']);
    expect(meaningsOf('green brown silver gold', 'resistor')).toEqual(['resistor 0.51']);
    expect(meaningsOf('green brown pink gold', 'resistor')).toEqual(['resistor 0.051']);
  });
  test('on an axial inductor count microhenry, from memory', () => {
    const inductor = readingsOf('brown black red silver').find(({ kind }) => kind === 'inductor');
    expect(inductor).toMatchObject({ value: 1e-3, unit: 'H', tolerance: { minus: 0.1, plus: 0.1, unit: '1' } });
    expect(inductor?.source.grade).toBe('memory');
  });
  test('grey as tolerance says that it changed', () => {
    const [reading] = readingsOf('brown black black red grey', 'resistor').filter(({ value }) => value === 10_000);
    expect(reading?.tolerance?.plus).toBe(0.0001);
    expect(reading?.notes).toContain('grey-tolerance-changed');
  });
  test.each(['bn bk rd gd', 'BRN BLK RED GLD', 'brown, black, red, gold', 'brown-black-red-gold', 'Brown Black Red Gold'])(
    'are understood as "%s"',
    (text) => {
      expect(meaningsOf(text, 'resistor')).toEqual(['resistor 1000']);
    },
  );
  test('two or seven are no code', () => {
    expect(isRefusal(decodeMarking('brown red'))).toBe(true);
    expect(isRefusal(decodeMarking('brown red red red red red red'))).toBe(true);
  });
  test('a narrow tolerance on two digits is noted, and so is a wide one on three', () => {
    expect(readingsOf('yellow violet red brown', 'resistor')[0]?.notes).toContain('digits-unusual-for-tolerance');
    expect(readingsOf('brown blue black orange gold', 'resistor')[0]?.notes).toContain('digits-unusual-for-tolerance');
    expect(readingsOf('yellow violet red gold', 'resistor')[0]?.notes).not.toContain('digits-unusual-for-tolerance');
  });
  test('written for any two figures and a power of ten come back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 99 }), fc.integer({ min: 0, max: 9 }), (figures, exponent) => {
        const words = [...String(figures)].map((digit) => DIGITS[Number(digit)]);
        expect(meaningsOf(`${words.join(' ')} ${DIGITS[exponent]} gold`, 'resistor')).toEqual([
          `resistor ${Number(`${figures}e${exponent}`)}`,
        ]);
      }),
      RUN,
    );
  });
  test('written for any three figures and a power of ten come back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 999 }), fc.integer({ min: 0, max: 9 }), (figures, exponent) => {
        const words = [...String(figures)].map((digit) => DIGITS[Number(digit)]);
        expect(meaningsOf(`${words.join(' ')} ${DIGITS[exponent]} silver`, 'resistor')).toEqual([
          `resistor ${Number(`${figures}e${exponent}`)}`,
        ]);
      }),
      RUN,
    );
  });
});
