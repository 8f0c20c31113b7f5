import { describe, expect, test } from 'vitest';
import { meaningsOf, readingsOf, settledBy } from './readings-of.ts';

describe('a mark with several meanings', () => {
  test('10R is 10 Ω by its letter and 1.24 Ω by the code of E96; only a measurement tells', () => {
    expect(meaningsOf('10R')).toEqual(['resistor 10', 'resistor 1.24']);
    expect(readingsOf('10R').map(({ scheme }) => scheme)).toEqual(['letter-at-point', 'e96-code']);
    expect(settledBy('10R')).toEqual(['measure-resistance']);
  });
  test('01R can only be a code of E96: no value begins with a zero before its letter', () =>
    expect(meaningsOf('01R')).toEqual(['resistor 1']));
  test('1R0 is no code of E96', () => expect(meaningsOf('1R0', 'resistor')).toEqual(['resistor 1']));
  test('100 is 10 Ω, 10 pF, 10 µH or the 100 µF of a can', () => {
    expect(meaningsOf('100').toSorted()).toEqual(
      ['capacitor 0.0001', 'capacitor 1e-11', 'inductor 0.00001', 'resistor 10'].map(asNumberText).toSorted(),
    );
    expect(settledBy('100')).toEqual(['board-letter', 'measure-capacitance']);
  });
  test('474 is a resistor, a capacitor or an inductor', () => {
    expect(meaningsOf('474').toSorted()).toEqual(['capacitor 4.7e-7', 'inductor 0.47', 'resistor 470000']);
    expect(settledBy('474')).toEqual(['board-letter']);
  });
  test('472K reads K as ten per cent or as kilo; among equally sourced readings the value outside every series comes last', () => {
    expect(meaningsOf('472K')).toEqual(['capacitor 4.7e-9', 'resistor 472000', 'resistor 4700', 'inductor 0.0047']);
    expect(settledBy('472K')).toEqual(['board-letter', 'measure-resistance']);
  });
  test('47K is 47 kΩ or 47 pF ± 10 %', () => {
    expect(meaningsOf('47K').toSorted()).toEqual(['capacitor 4.7e-11', 'resistor 47000']);
  });
  test('4N7 is 4.7 nF or 4.7 nH, since prints do not keep small letters', () => {
    expect(meaningsOf('4N7').toSorted()).toEqual(['capacitor 4.7e-9', 'inductor 4.7e-9']);
    expect(meaningsOf('4n7')).toEqual(['capacitor 4.7e-9']);
  });
  test('4m7 is no 4M7', () => {
    expect(meaningsOf('4m7').toSorted()).toEqual(['capacitor 0.0047', 'resistor 0.0047']);
    expect(meaningsOf('4M7')).toEqual(['resistor 4700000']);
  });
  test('1K63 is a film capacitor of 1 µF 63 V or a resistor of an unusual value', () => {
    expect(readingsOf('1K63').map(({ kind, voltage }) => [kind, voltage])).toEqual([
      ['capacitor', 63],
      ['resistor', null],
    ]);
  });
  test('R05 is first of all 50 mΩ, though that stands in no series: the other readings are from memory', () => {
    expect(meaningsOf('R05')).toEqual(['resistor 0.05', 'resistor 1.5', 'inductor 5e-8']);
  });
  test('1H is a rated voltage, an inductance or a small capacitor', () => {
    expect(meaningsOf('1H').toSorted()).toEqual(['capacitor 1e-12', 'inductor 1', 'voltage-rating 50']);
  });
  test('is narrowed by saying what the part is', () => {
    expect(meaningsOf('474', 'resistor')).toEqual(['resistor 470000']);
    expect(settledBy('474', 'resistor')).toEqual([]);
    expect(meaningsOf('474', 'inductor')).toEqual(['inductor 0.47']);
  });
});

function asNumberText(text: string): string {
  const [kind, value] = text.split(' ');
  return `${kind} ${Number(value)}`;
}

describe('a mark with one meaning', () => {
  test.each([
    ['0', 'jumper 0'],
    ['00', 'jumper 0'],
    ['000', 'jumper 0'],
    ['0000', 'jumper 0'],
    ['0R0', 'jumper 0'],
    ['0R22', 'resistor 0.22'],
    ['R010', 'resistor 0.01'],
    ['5L0', 'resistor 0.005'],
    ['4k7', 'resistor 4700'],
    ['1G', 'resistor 1000000000'],
    ['47N', 'inductor 4.7e-8'],
    ['5V1', 'diode 5.1'],
    ['10 kΩ ± 5 %', 'resistor 10000'],
    ['33 µH', 'inductor 0.000033'],
  ])('%s is a %s', (mark, meaning) => expect(meaningsOf(mark)).toContain(asNumberText(meaning)));
  test('has nothing to settle', () => {
    for (const mark of ['4K7', '0000', '2A104J', '5V1']) expect(settledBy(mark)).toEqual([]);
  });
  test('4K7J is at five per cent', () => expect(readingsOf('4K7J')[0]?.tolerance).toEqual({ minus: 0.05, plus: 0.05, unit: '1' }));
  test('digits on a resistor may be underlined, which a keyboard cannot say', () => {
    expect(readingsOf('100', 'resistor')[0]?.notes).toContain('underline-may-mean-current-sense');
  });
  test('milliohm letters count as remembered', () => expect(readingsOf('5L0')[0]?.source.grade).toBe('memory'));
});
