import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity, type Printable, quantityText } from '../../src/core/quantity/format-quantity.ts';
import { COVERAGE_OF_PLUS_MINUS, parseQuantity, type Quantity } from '../../src/core/quantity/parse-quantity.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { type Kind, SI_UNIT } from '../../src/core/quantity/unit.ts';
import { MANY, SEED } from './seed.ts';

const RUN = { seed: SEED, numRuns: MANY };
const KINDS = Object.keys(SI_UNIT) as Kind[];
const SIGNIFICANT = 5e-4; // half a step of the fourth digit
const LAST_BITS = 1e-9;

/** Sizes that print as plain decimals in their unit: from picofarads and microkelvin to gigaohms. */
const size = fc
  .tuple(fc.double({ min: 1, max: 9.999_999, noNaN: true }), fc.integer({ min: -6, max: 9 }), fc.boolean())
  .map(([mantissa, exponent, negative]) => (negative ? -1 : 1) * mantissa * 10 ** exponent);
const share = fc.tuple(fc.double({ min: 1, max: 9.999, noNaN: true }), fc.integer({ min: -5, max: 0 })).map(([m, e]) => m * 10 ** e);
const kind = fc.constantFrom(...KINDS);
const amount = (k: Kind, value: number): number => (k === 'temperature' ? 273.15 + Math.max(-200, Math.min(value, 1500)) : value);

function back(printable: Printable, k: Kind): Quantity {
  const text = quantityText(printable);
  const read = parseQuantity(text, k);
  if (isRefusal(read)) throw new Error(`"${text}" was refused: ${read.code}`);
  return read;
}

const NOT_DECIMAL: Readonly<Record<string, number>> = { min: 60, h: 3600 };

/** One step of the last digit that an uncertainty leaves, in SI: two digits of the half width as printed, one when it starts with 3 or more. */
function stepFor(printable: Printable): number {
  const factor = NOT_DECIMAL[formatQuantity(printable).unit] ?? 1;
  const halfWidth = ((printable.u ?? Number.NaN) * COVERAGE_OF_PLUS_MINUS) / factor;
  const decade = 10 ** Math.floor(Math.log10(halfWidth) + LAST_BITS);
  return (halfWidth / decade < 3 - LAST_BITS ? decade / 10 : decade) * factor;
}

/** A temperature is printed from the ice point, so its digits count from there. */
const shown = (k: Kind, value: number): number => (k === 'temperature' ? value - 273.15 : value);

describe('quantities as a reader sees them', () => {
  it.each([
    [{ value: 0.0049, unit: 'm', u: 0.00005 }, '4.90 ± 0.10 mm'],
    [{ value: 5.12, unit: 'V', u: 0.0123 }, '5.120 ± 0.025 V'],
    [{ value: 10, unit: 'V', u: 1.5 }, '10 ± 3 V'],
    [{ value: 0.4, unit: 'V', u: 5 }, '0 ± 10 V'],
    [{ value: 378.15, unit: 'K', u: 1 }, '105.0 ± 2.0 °C'],
    [{ value: 268.15, unit: 'K', u: null }, '\u22125 °C'],
    [{ value: 2.2e-9, unit: 'F', u: null }, '2.2 nF'],
    [{ value: 99_999, unit: 'Ω', u: null }, '100 kΩ'],
    [{ value: 5400, unit: 's', u: null }, '90 min'],
    [{ value: 0.0001, unit: 'm', u: null, side: 'below' }, 'below 0.1 mm'],
    [{ value: 3, unit: 'V', u: null, side: 'anywhere' }, 'not bounded'],
  ] as const)('%o is printed %s', (printable, text) => {
    expect(quantityText(printable)).toBe(text);
  });
});

describe('a printed quantity', () => {
  it('without an uncertainty comes back to four digits, in its own unit', () => {
    fc.assert(
      fc.property(kind, size, (k, raw) => {
        const value = amount(k, raw);
        const read = back({ value, unit: SI_UNIT[k], u: null }, k);
        expect(read.unit).toBe(SI_UNIT[k]);
        expect(read.u).toBeNull();
        expect(Math.abs(read.value - value)).toBeLessThanOrEqual(SIGNIFICANT * Math.abs(shown(k, value)) + LAST_BITS * Math.abs(value));
      }),
      RUN,
    );
  });

  it('with an uncertainty comes back within half of its last printed digit, and so does the uncertainty', () => {
    fc.assert(
      fc.property(kind, size, share, (k, raw, part) => {
        const value = amount(k, raw);
        const u = Math.abs(shown(k, value)) * part + Number.MIN_VALUE;
        const read = back({ value, unit: SI_UNIT[k], u }, k);
        const halfStep = stepFor({ value, unit: SI_UNIT[k], u }) / 2 + LAST_BITS * Math.abs(value);
        expect(Math.abs(read.value - value)).toBeLessThanOrEqual(halfStep);
        expect(Math.abs((read.u ?? Number.NaN) - u) * COVERAGE_OF_PLUS_MINUS).toBeLessThanOrEqual(halfStep);
      }),
      RUN,
    );
  });

  it('has an uncertainty of one or two digits, and ends at the same decimal as it', () => {
    fc.assert(
      fc.property(kind, size, share, (k, raw, part) => {
        const value = amount(k, raw);
        const printed = formatQuantity({ value, unit: SI_UNIT[k], u: Math.abs(shown(k, value)) * part + Number.MIN_VALUE });
        const spread = printed.plusMinus ?? '';
        const significant = spread.includes('.') ? spread.replace('.', '').replace(/^0+/, '') : spread.replace(/0+$/, '');
        expect(significant).toMatch(/^[1-9][0-9]?$/);
        expect(printed.number.split('.')[1]?.length ?? 0).toBe(spread.split('.')[1]?.length ?? 0);
      }),
      RUN,
    );
  });

  it('that is a bound comes back as that bound', () => {
    fc.assert(
      fc.property(kind, size, fc.constantFrom('below' as const, 'above' as const), (k, raw, side) => {
        const value = amount(k, raw);
        const read = back({ value, unit: SI_UNIT[k], u: null, side }, k);
        expect(read.side).toBe(side);
        expect(Math.abs(read.value - value)).toBeLessThanOrEqual(SIGNIFICANT * Math.abs(shown(k, value)) + LAST_BITS * Math.abs(value));
      }),
      RUN,
    );
  });

  it('that is not bounded at all cannot be read as a number', () => {
    fc.assert(
      fc.property(kind, size, (k, value) => {
        expect(isRefusal(parseQuantity(quantityText({ value, unit: SI_UNIT[k], u: 1, side: 'anywhere' }), k))).toBe(true);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('is never printed with a hyphen for a minus, nor as minus zero', () => {
    fc.assert(
      fc.property(kind, size, share, (k, raw, part) => {
        const text = quantityText({ value: amount(k, raw), unit: SI_UNIT[k], u: Math.abs(raw) * part * 3 });
        expect(text).not.toMatch(/^-|^\u22120(?:\.0*)?(?: |$)/);
      }),
      RUN,
    );
  });
});
