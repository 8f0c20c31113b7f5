import { describe, expect, test } from 'vitest';
import { decodeMarking } from '../../src/core/marking/decode-marking.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { readingsOf } from './readings-of.ts';

const TEN = { minus: 0.1, plus: 0.1, unit: '1' };
const FIVE = { minus: 0.05, plus: 0.05, unit: '1' };
const TWENTY = { minus: 0.2, plus: 0.2, unit: '1' };

describe('a capacitor’s value, tolerance and voltage', () => {
  test.each([
    ['0.1K400', 100e-9, TEN, 400],
    ['.1K63', 100e-9, TEN, 63],
    ['0,22J250', 220e-9, FIVE, 250],
    ['0.1', 100e-9, null, null],
    ['2A104J', 100e-9, FIVE, 100],
    ['2E473K', 47e-9, TEN, 250],
    ['104K400', 100e-9, TEN, 400],
    ['104K400V', 100e-9, TEN, 400],
    ['103M1KV', 10e-9, TWENTY, 1000],
    ['104J2A', 100e-9, FIVE, 100],
    ['104J 2A', 100e-9, FIVE, 100],
    ['4n7K400', 4.7e-9, TEN, 400],
    ['102 1KV', 1e-9, null, 1000],
    ['104 K 400V', 100e-9, TEN, 400],
    ['222 M 2kV', 2.2e-9, TWENTY, 2000],
    ['100nF ±10% 250V', 100e-9, TEN, 250],
    ['105K 330V', 1e-6, TEN, 330],
    ['CBB22 104J 400V', 100e-9, FIVE, 400],
    ['47µF (M) 25V 105°C', 47e-6, TWENTY, 25],
    ['1000 µF 16 V -40/+105 °C', 1e-3, null, 16],
  ] as const)('%s is %d F, %o, %s V', (mark, value, tolerance, voltage) => {
    const readings = readingsOf(mark);
    expect(readings).toHaveLength(1);
    expect(readings[0]).toMatchObject({ kind: 'capacitor', value, unit: 'F', tolerance, voltage, safetyClasses: [] });
  });
  test('100 16V is a small ceramic or a can, and a measurement tells', () => {
    const decoded = decodeMarking('100 16V');
    expect(isRefusal(decoded) ? [] : decoded.readings.map(({ value, voltage }) => [value, voltage])).toEqual([
      [10e-12, 16],
      [100e-6, 16],
    ]);
    expect(isRefusal(decoded) ? [] : decoded.settledBy).toEqual(['measure-capacitance']);
  });
  test('100uF 25V is written out: its F is the unit, no tolerance', () => {
    expect(readingsOf('100uF 25V').map(({ value, tolerance, voltage }) => [value, tolerance, voltage])).toEqual([[100e-6, null, 25]]);
    expect(readingsOf('100 µF / 25 V')).toMatchObject([{ value: 100e-6, voltage: 25 }]);
  });
  test('a letter and a percentage that contradict each other are no reading', () => {
    expect(readingsOf('472K 10%', 'capacitor').map(({ tolerance }) => tolerance)).toEqual([TEN]);
    expect(isRefusal(decodeMarking('472K 5%', 'capacitor'))).toBe(true);
  });
  test('a code and a printed voltage that contradict each other are no reading', () => {
    expect(readingsOf('2A104J 100V')).toMatchObject([{ voltage: 100 }]);
    expect(isRefusal(decodeMarking('2A104J 50V'))).toBe(true);
  });
  test('a voltage alone is a rating', () =>
    expect(readingsOf('400V')).toMatchObject([{ kind: 'voltage-rating', value: 400, unit: 'V', voltage: 400 }]));
  test('a voltage makes it no resistor', () => {
    expect(isRefusal(decodeMarking('102 1KV', 'resistor'))).toBe(true);
    expect(isRefusal(decodeMarking('X2', 'inductor'))).toBe(true);
  });
});

describe('a safety class', () => {
  test('stands with its value and its mains voltage: X2 0.1uF 275V~', () => {
    expect(readingsOf('X2 0.1uF 275V~')).toMatchObject([
      { kind: 'capacitor', value: 100e-9, voltage: 275, safetyClasses: [{ name: 'X2', voltage: 275, stands: 'line-to-line' }] },
    ]);
    expect(readingsOf('X2 0.1uF 275V~')[0]?.notes).toEqual(['alternating-voltage', 'class-is-safety-data']);
  });
  test('stands with a code: 222M Y1 400V', () => {
    expect(readingsOf('222M Y1 400V')).toMatchObject([
      {
        kind: 'capacitor',
        value: 2.2e-9,
        tolerance: TWENTY,
        voltage: 400,
        safetyClasses: [{ name: 'Y1', voltage: 400, stands: 'reinforced' }],
      },
    ]);
  });
  test('has each its own voltage: Y1 400V Y2 300V', () => {
    expect(readingsOf('Y1 400V Y2 300V')).toMatchObject([
      {
        kind: 'safety-class',
        value: null,
        unit: null,
        voltage: null,
        safetyClasses: [
          { name: 'Y1', voltage: 400, stands: 'reinforced' },
          { name: 'Y2', voltage: 300, stands: 'basic' },
        ],
      },
    ]);
  });
  test('may follow its voltage', () => {
    const [reading] = readingsOf('400V~ X1 250V~ Y2');
    expect(reading?.safetyClasses.map(({ name, voltage }) => [name, voltage])).toEqual([
      ['X1', 400],
      ['Y2', 250],
    ]);
  });
  test.each(['X1Y2 250V~', 'X1/Y2 250V~', '250V~ X1 Y2'])('shares one voltage with another in "%s"', (mark) => {
    expect(readingsOf(mark)[0]?.safetyClasses.map(({ name, voltage }) => [name, voltage])).toEqual([
      ['X1', 250],
      ['Y2', 250],
    ]);
  });
  test('gets no voltage where the order does not say whose it is', () => {
    const [reading] = readingsOf('X1 Y2 400V 250V');
    expect(reading?.safetyClasses.map(({ voltage }) => voltage)).toEqual([null, null]);
    expect(reading?.notes).toContain('voltage-not-assigned');
  });
  test.each([
    ['X1', 'line-to-line'],
    ['X2', 'line-to-line'],
    ['X3', 'line-to-line'],
    ['Y1', 'reinforced'],
    ['Y2', 'basic'],
    ['Y3', 'basic'],
    ['Y4', 'basic'],
  ] as const)('%s stands %s', (name, stands) => expect(readingsOf(name)[0]?.safetyClasses).toEqual([{ name, voltage: null, stands }]));
  test('X4 and Y5 do not exist', () => {
    expect(isRefusal(decodeMarking('X4'))).toBe(true);
    expect(isRefusal(decodeMarking('Y5'))).toBe(true);
  });
  test('the whole print of a mains capacitor is read, and what is not decoded is said', () => {
    const [reading, ...more] = readingsOf('0.1µF K X2 MKP 275V~ 40/110/56/B');
    expect(more).toEqual([]);
    expect(reading).toMatchObject({ value: 100e-9, tolerance: TEN, voltage: 275 });
    expect(reading?.notes).toEqual(['dielectric-not-decoded', 'alternating-voltage', 'climate-not-decoded', 'class-is-safety-data']);
  });
});
