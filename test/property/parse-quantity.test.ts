import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseAccuracy } from '../../src/core/quantity/accuracy.ts';
import { parseNumber } from '../../src/core/quantity/parse-number.ts';
import { parseQuantity } from '../../src/core/quantity/parse-quantity.ts';
import { parseRange } from '../../src/core/quantity/parse-range.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { type Kind, SI_UNIT } from '../../src/core/quantity/unit.ts';
import { MANY, SEED } from './seed.ts';
import { REFUSED, UNDERSTOOD } from './spellings.ts';

const KINDS = Object.keys(SI_UNIT) as Kind[];
const OUTER = ['', ' ', '  ', '\t', '\n', '\u00a0', '\u2009', '\u202f', ' \r\n'];

const fragment = fc.constantFrom(
  ...['4', '9', '0', '12', '250', '.', ',', ' ', '-', '+', '−', 'e', 'E', '(', ')', '±', '+/-', '<', '>', '≤', '%', '/', '·'],
  ...[
    'm',
    'mm',
    'k',
    'K',
    'M',
    'G',
    'n',
    'p',
    'u',
    'µ',
    'μ',
    'R',
    'V',
    'A',
    'W',
    'Ω',
    'Ohm',
    'F',
    'H',
    'Hz',
    'C',
    '°C',
    '°F',
    'h',
    'min',
    's',
    'mil',
    'N',
    'J',
  ],
);
const nearly = fc.array(fragment, { minLength: 1, maxLength: 8 }).map((parts) => parts.join(''));
const anyText = fc.oneof(nearly, fc.string({ unit: 'binary', maxLength: 40 }), fc.string({ maxLength: 40 }));
const anyKind = fc.option(fc.constantFrom(...KINDS), { nil: undefined });

describe('what people write is understood', () => {
  it.each(UNDERSTOOD)('$text as $kind', ({ text, kind, value, unit, u, side }) => {
    const read = parseQuantity(text, kind);
    if (isRefusal(read)) throw new Error(`${read.code}: expected ${read.expected}`);
    expect(read.value).toBe(value);
    expect(read.unit).toBe(unit);
    if (u === undefined) expect(read.u).toBeNull();
    else expect(read.u).toBeCloseTo(u, 12);
    expect(read.side).toBe(side);
  });

  it.each(UNDERSTOOD.filter(({ alone }) => alone === true))('$text also when nothing says what to expect', ({ text, value, unit }) => {
    expect(parseQuantity(text)).toMatchObject({ value, unit });
  });
});

describe('what cannot be understood without guessing is refused', () => {
  it.each(REFUSED)('$text, asked for as $kind: $code', ({ text, kind, code }) => {
    const read = parseQuantity(text, kind);
    expect(isRefusal(read) ? read.code : `${read.value} ${read.unit}`).toBe(code);
  });

  it.each(REFUSED)('$text is repeated to the person, with what was expected', ({ text, kind }) => {
    const read = parseQuantity(text, kind);
    if (!isRefusal(read)) throw new Error('it was understood');
    expect(read.got).toBe(text);
    expect(read.expected.length).toBeGreaterThan(5);
  });
});

describe('any text', () => {
  it('means the same with and without spaces around it', () => {
    fc.assert(
      fc.property(anyText, anyKind, fc.constantFrom(...OUTER), fc.constantFrom(...OUTER), (text, kind, before, after) => {
        const plain = parseQuantity(text, kind);
        const spaced = parseQuantity(before + text + after, kind);
        if (isRefusal(plain) || isRefusal(spaced)) expect(isRefusal(spaced)).toBe(isRefusal(plain));
        else expect({ ...spaced, text }).toEqual({ ...plain, text });
      }),
      { seed: SEED, numRuns: MANY },
    );
  });

  it('is read or refused, never thrown at', () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom(...KINDS), (text, kind) => {
        for (const read of [parseQuantity(text, kind), parseQuantity(text), parseNumber(text)])
          expect(isRefusal(read) || Number.isFinite(read.value)).toBe(true);
        const range = parseRange(text, kind);
        expect(isRefusal(range) || range.from.value <= range.to.value).toBe(true);
        const accuracy = parseAccuracy(text, kind);
        expect(isRefusal(accuracy) || Number.isFinite(accuracy.ofReading + accuracy.digits + accuracy.fixed)).toBe(true);
      }),
      { seed: SEED, numRuns: MANY },
    );
  });

  it('that is understood for a kind has the unit of that kind', () => {
    fc.assert(
      fc.property(nearly, fc.constantFrom(...KINDS), (text, kind) => {
        const read = parseQuantity(text, kind);
        if (isRefusal(read)) return;
        expect([read.kind, read.unit]).toEqual([kind, SI_UNIT[kind]]);
        expect(read.lastDigit).toBeGreaterThanOrEqual(0);
      }),
      { seed: SEED, numRuns: MANY },
    );
  });

  it('that is understood with no kind in mind means the same when its own kind is asked for', () => {
    fc.assert(
      fc.property(nearly, (text) => {
        const read = parseQuantity(text);
        if (isRefusal(read)) return;
        expect(parseQuantity(text, read.kind)).toEqual(read);
      }),
      { seed: SEED, numRuns: MANY },
    );
  });
});
