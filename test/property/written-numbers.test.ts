import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseNumber, parsePositive } from '../../src/core/quantity/parse-number.ts';
import { parseQuantity } from '../../src/core/quantity/parse-quantity.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { shiftDecimal } from '../../src/core/quantity/shift-decimal.ts';
import { MANY, SEED } from './seed.ts';

const RUN = { seed: SEED, numRuns: MANY };
const digits = (least: number, most: number) => fc.stringMatching(new RegExp(`^[0-9]{${least},${most}}$`));
const sign = fc.constantFrom('', '-', '+');
const PREFIX_EXPONENT = { p: -12, n: -9, u: -6, µ: -6, m: -3, k: 3, K: 3, M: 6, G: 9 } as const;
type Prefix = keyof typeof PREFIX_EXPONENT;

function numberOf(read: ReturnType<typeof parseNumber> | ReturnType<typeof parseQuantity>): number {
  if (isRefusal(read)) throw new Error(`refused: ${read.code}`);
  return read.value;
}

describe('a plain decimal', () => {
  it('is the nearest double, to the last bit', () => {
    fc.assert(
      fc.property(sign, digits(1, 17), digits(0, 17), (s, whole, fraction) => {
        const text = `${s}${whole}${fraction === '' ? '' : `.${fraction}`}`;
        expect(Object.is(numberOf(parseNumber(text)), Number(text))).toBe(true);
      }),
      RUN,
    );
  });

  it('reads the same with a decimal comma, unless the comma could separate thousands', () => {
    fc.assert(
      fc.property(digits(1, 6), digits(1, 6), (whole, fraction) => {
        const read = parseNumber(`${whole},${fraction}`);
        const couldBeThousands = fraction.length === 3 && whole.length <= 3 && !whole.startsWith('0');
        if (couldBeThousands) expect(isRefusal(read) ? read.code : read.value).toBe('ambiguous-comma');
        else expect(numberOf(read)).toBe(Number(`${whole}.${fraction}`));
      }),
      RUN,
    );
  });

  it('has a last digit that is one step of what was written', () => {
    fc.assert(
      fc.property(digits(1, 6), digits(1, 6), (whole, fraction) => {
        const read = parseNumber(`${whole}.${fraction}`);
        if (isRefusal(read)) throw new Error(read.code);
        expect(read.lastDigit).toBe(Number(`1e-${fraction.length}`));
      }),
      RUN,
    );
  });

  it('printed by the language itself comes back to the last bit', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(numberOf(parseNumber(String(value)))).toBe(value + 0);
      }),
      RUN,
    );
  });

  it('below zero is refused where only a positive one makes sense', () => {
    fc.assert(
      fc.property(
        digits(1, 5).filter((text) => Number(text) > 0),
        (text) => {
          expect(isRefusal(parsePositive(`-${text}`))).toBe(true);
          expect(numberOf(parsePositive(text))).toBe(Number(text));
        },
      ),
      RUN,
    );
  });

  it('moved by powers of ten is the decimal that one would write', () => {
    fc.assert(
      fc.property(digits(1, 8), digits(1, 8), fc.integer({ min: -15, max: 15 }), (whole, fraction, exponent) => {
        expect(shiftDecimal(Number(`${whole}.${fraction}`), exponent)).toBe(Number(`${Number(`${whole}.${fraction}`)}e${exponent}`));
      }),
      RUN,
    );
  });
});

describe('a number with more than one mark', () => {
  it.each(['1.250,5', '1,250.5', '1,250,000', '1,250'])('%s is refused for its commas, not read by a guess', (text) => {
    const read = parseNumber(text);
    expect(isRefusal(read) ? read.code : read.value).toBe('ambiguous-comma');
  });
});

describe('a code with a letter at the decimal point', () => {
  const letters = (of: readonly Prefix[]) => fc.constantFrom(...of);

  it('of a resistor is exact: 4k7 is 4700', () => {
    fc.assert(
      fc.property(digits(1, 4), letters(['k', 'K', 'M', 'G']), digits(1, 3), (whole, letter, fraction) => {
        const read = parseQuantity(`${whole}${letter}${fraction}`);
        expect(Object.is(numberOf(read), Number(`${whole}.${fraction}e${PREFIX_EXPONENT[letter]}`))).toBe(true);
        expect(isRefusal(read) ? null : read.unit).toBe('Ω');
      }),
      RUN,
    );
  });

  it('R stands for the point itself', () => {
    fc.assert(
      fc.property(digits(0, 4), digits(1, 3), (whole, fraction) => {
        expect(numberOf(parseQuantity(`${whole}R${fraction}`, 'resistance'))).toBe(Number(`${whole === '' ? '0' : whole}.${fraction}`));
      }),
      RUN,
    );
  });

  it('of a capacitor is exact: 2n2 is 2.2 nF', () => {
    fc.assert(
      fc.property(digits(1, 4), letters(['p', 'n', 'u', 'µ', 'm']), digits(1, 3), (whole, letter, fraction) => {
        const coded = numberOf(parseQuantity(`${whole}${letter}${fraction}`, 'capacitance'));
        expect(Object.is(coded, Number(`${whole}.${fraction}e${PREFIX_EXPONENT[letter]}`))).toBe(true);
        expect(coded).toBe(numberOf(parseQuantity(`${whole}.${fraction} ${letter}F`, 'capacitance')));
      }),
      RUN,
    );
  });

  it('of a part is never read as a voltage, a length or a time', () => {
    fc.assert(
      fc.property(digits(1, 3), letters(['k', 'M', 'p', 'n', 'u', 'm']), digits(1, 3), (whole, letter, fraction) => {
        for (const kind of ['voltage', 'length', 'time'] as const)
          expect(isRefusal(parseQuantity(`${whole}${letter}${fraction}`, kind))).toBe(true);
      }),
      RUN,
    );
  });
});
