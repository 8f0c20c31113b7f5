import { describe, expect, test } from 'vitest';
import type { Part } from '../../src/core/marking/reading.ts';
import { parseVoltageCode } from '../../src/core/marking/voltage-code.ts';
import { readingsOf } from './readings-of.ts';

/** A mark and what somebody else prints for it. Values in SI; `share` is the tolerance. */
interface Published {
  readonly mark: string;
  readonly part: Part;
  readonly scheme: string;
  readonly value: number;
  readonly share?: number;
  readonly origin: string;
}

const ENCYCLOPAEDIA = 'an encyclopaedia, article on the letter and digit code of IEC 60062';
const LEARNING_PAGE = 'a board maker’s learning page on reading resistors';
const CODE_TABLE = 'code tables and worked lines of a hobby page of 2014';
const RULE = 'the rule of two digits and zeros, worked by hand';

const PUBLISHED: readonly Published[] = [
  { mark: '4R7', part: 'resistor', scheme: 'letter-at-point', value: 4.7, origin: ENCYCLOPAEDIA },
  { mark: 'R47', part: 'resistor', scheme: 'letter-at-point', value: 0.47, origin: ENCYCLOPAEDIA },
  { mark: '4K7', part: 'resistor', scheme: 'letter-at-point', value: 4700, origin: ENCYCLOPAEDIA },
  { mark: '47K3', part: 'resistor', scheme: 'letter-at-point', value: 47_300, origin: ENCYCLOPAEDIA },
  { mark: '4M7', part: 'resistor', scheme: 'letter-at-point', value: 4_700_000, origin: ENCYCLOPAEDIA },
  { mark: '424', part: 'resistor', scheme: 'three-digit', value: 420_000, origin: LEARNING_PAGE },
  { mark: '420', part: 'resistor', scheme: 'three-digit', value: 42, origin: LEARNING_PAGE },
  { mark: '1002', part: 'resistor', scheme: 'four-digit', value: 10_000, origin: RULE },
  { mark: '103', part: 'resistor', scheme: 'three-digit', value: 10_000, origin: RULE },
  { mark: '2701', part: 'resistor', scheme: 'four-digit', value: 2700, origin: 'a chip resistor maker’s data sheet' },
  { mark: '10R0', part: 'resistor', scheme: 'letter-at-point', value: 10, origin: 'a chip resistor maker’s data sheet' },
  { mark: 'R300', part: 'resistor', scheme: 'letter-at-point', value: 0.3, origin: 'a chip resistor maker’s data sheet' },
  { mark: '01C', part: 'resistor', scheme: 'e96-code', value: 10_000, share: 0.01, origin: LEARNING_PAGE },
  { mark: '68X', part: 'resistor', scheme: 'e96-code', value: 49.9, share: 0.01, origin: LEARNING_PAGE },
  { mark: '66B', part: 'resistor', scheme: 'e96-code', value: 4750, share: 0.01, origin: LEARNING_PAGE },
  { mark: '51D', part: 'resistor', scheme: 'e96-code', value: 332_000, share: 0.01, origin: LEARNING_PAGE },
  { mark: '30B', part: 'resistor', scheme: 'e96-code', value: 2000, share: 0.01, origin: LEARNING_PAGE },
  { mark: 'brown blue black orange gold', part: 'resistor', scheme: 'colour-bands', value: 160_000, share: 0.05, origin: LEARNING_PAGE },
  { mark: '104', part: 'capacitor', scheme: 'capacitor-digits', value: 100e-9, origin: CODE_TABLE },
  { mark: '472K', part: 'capacitor', scheme: 'capacitor-digits', value: 4.7e-9, share: 0.1, origin: RULE },
  { mark: '2n2', part: 'capacitor', scheme: 'capacitor-letter', value: 2.2e-9, origin: ENCYCLOPAEDIA },
  { mark: '474J', part: 'capacitor', scheme: 'capacitor-digits', value: 470e-9, share: 0.05, origin: CODE_TABLE },
  { mark: '2A474J', part: 'capacitor', scheme: 'film-mark', value: 470e-9, share: 0.05, origin: CODE_TABLE },
  { mark: '3R9', part: 'capacitor', scheme: 'capacitor-letter', value: 3.9e-12, origin: CODE_TABLE },
  { mark: '479', part: 'capacitor', scheme: 'capacitor-digits', value: 4.7e-12, origin: CODE_TABLE },
  { mark: '478', part: 'capacitor', scheme: 'capacitor-digits', value: 0.47e-12, origin: CODE_TABLE },
];

describe('a marking read elsewhere', () => {
  test.each(PUBLISHED)('$mark on a $part is $value in SI, as in $origin', ({ mark, part, scheme, value, share }) => {
    const reading = readingsOf(mark, part).find((one) => one.scheme === scheme);
    expect(reading?.value).toBe(value);
    if (share !== undefined) expect(reading?.tolerance).toEqual({ minus: share, plus: share, unit: '1' });
    else expect(reading?.tolerance).toBeNull();
  });
  test.each(PUBLISHED)('$mark means the same when nobody says what the part is', ({ mark, part, scheme, value }) => {
    const same = readingsOf(mark).filter((one) => one.kind === part && one.scheme === scheme && one.value === value);
    expect(same).toHaveLength(1);
  });
});

/** Code tables of three capacitor makers, in one copy. */
const VOLTAGES: readonly (readonly [code: string, volts: number])[] = [
  ['0G', 4],
  ['0J', 6.3],
  ['1A', 10],
  ['1C', 16],
  ['1E', 25],
  ['1V', 35],
  ['1H', 50],
  ['1N', 75],
  ['2A', 100],
  ['2D', 200],
  ['2E', 250],
  ['2H', 500],
];
/** A hobby page's table of the same code. */
const MORE_VOLTAGES: readonly (readonly [code: string, volts: number])[] = [
  ['0L', 5.5],
  ['1J', 63],
  ['1K', 80],
  ['2Q', 110],
  ['2B', 125],
  ['2C', 160],
  ['2Z', 180],
  ['2P', 220],
  ['2F', 315],
  ['2V', 350],
  ['2G', 400],
  ['2W', 450],
  ['2J', 630],
  ['3A', 1000],
];

describe('the code of a rated voltage', () => {
  test.each([...VOLTAGES, ...MORE_VOLTAGES])('%s is %d V', (code, volts) => {
    const readings = readingsOf(code, 'capacitor').filter(({ scheme }) => scheme === 'voltage-code');
    expect(readings.map(({ kind, value, unit, voltage }) => [kind, value, unit, voltage])).toEqual([['voltage-rating', volts, 'V', volts]]);
    expect(parseVoltageCode(code)?.grade).toBe('secondary');
  });
  test('1V is 35 V by the code and 1 V written out, on its own and beside a value', () => {
    expect(readingsOf('1V').map(({ voltage }) => voltage)).toEqual([35, 1]);
    expect(readingsOf('104K 1V').map(({ value, voltage }) => [value, voltage])).toEqual([
      [100e-9, 1],
      [100e-9, 35],
    ]);
    expect(readingsOf('104K 2V 250V').every(({ notes }) => notes.includes('voltage-not-assigned'))).toBe(true);
  });
  test('counts as remembered where no table that was read has it', () =>
    expect(parseVoltageCode('3F')).toEqual({ volts: 3150, grade: 'memory' }));
  test('is none with a letter or a decade that does not exist', () => {
    expect(parseVoltageCode('1O')).toBeNull();
    expect(parseVoltageCode('9A')).toBeNull();
    expect(parseVoltageCode('A1')).toBeNull();
  });
});

/** The same copy of makers' tables. */
const TOLERANCES: readonly (readonly [letter: string, size: number, unit: 'F' | '1'])[] = [
  ['B', 0.1e-12, 'F'],
  ['C', 0.25e-12, 'F'],
  ['D', 0.5e-12, 'F'],
  ['F', 0.01, '1'],
  ['G', 0.02, '1'],
  ['J', 0.05, '1'],
  ['K', 0.1, '1'],
  ['M', 0.2, '1'],
];

describe('the tolerance letter of a capacitor', () => {
  test.each(TOLERANCES)('%s is %d in %s either way', (letter, size, unit) => {
    const reading = readingsOf(`101${letter}`, 'capacitor').find(({ scheme }) => scheme === 'capacitor-digits');
    expect(reading?.tolerance).toEqual({ minus: size, plus: size, unit });
  });
  test('Z is lopsided, and from memory', () => {
    const [reading] = readingsOf('103Z', 'capacitor');
    expect(reading?.tolerance).toEqual({ minus: 0.2, plus: 0.8, unit: '1' });
    expect(reading?.source.grade).toBe('memory');
  });
  test('says so where a rule by size would read it otherwise', () => {
    expect(readingsOf('101C', 'capacitor')[0]?.notes).toContain('tolerance-letter-depends-on-size');
    expect(readingsOf('4R7C', 'capacitor')[0]?.notes).not.toContain('tolerance-letter-depends-on-size');
    expect(readingsOf('4R7F', 'capacitor')[0]?.notes).toContain('tolerance-letter-depends-on-size');
    expect(readingsOf('101F', 'capacitor')[0]?.notes).not.toContain('tolerance-letter-depends-on-size');
  });
});
