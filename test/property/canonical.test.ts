import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalText, roundNumber } from '../../src/core/result/canonical.ts';
import { digestOf } from '../../src/core/result/digest.ts';
import { MANY, SEED } from './seed.ts';

const RUN = { seed: SEED, numRuns: MANY };

/** A double by its bits, as RFC 8785 names them. */
function fromBits(hexadecimal: string): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setBigUint64(0, BigInt(`0x${hexadecimal}`));
  return view.getFloat64(0);
}

/** RFC 8785, appendix B: samples that twelve significant digits leave as they are. */
const SAMPLES = [
  ['0000000000000000', '0'],
  ['8000000000000000', '0'],
  ['0000000000000001', '5e-324'],
  ['8000000000000001', '-5e-324'],
  ['44b52d02c7e14af6', '1e+23'],
  ['444b1ae4d6e2ef50', '1e+21'],
  ['3eb0c6f7a0b5ed8d', '0.000001'],
] as const;
/** Samples that differ from one of those only beyond the twelfth digit: here they are the same number. */
const NEIGHBOURS = [
  ['44b52d02c7e14af5', '1e+23'],
  ['44b52d02c7e14af7', '1e+23'],
  ['444b1ae4d6e2ef4e', '1e+21'],
  ['444b1ae4d6e2ef4f', '1e+21'],
  ['3eb0c6f7a0b5ed8c', '0.000001'],
] as const;

const name = fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 8 }).filter((text) => !/^\d+$/.test(text));
const tree = fc.letrec<{ value: unknown; object: object }>((tie) => ({
  value: fc.oneof(
    { depthSize: 'small' },
    fc.constant(null),
    fc.boolean(),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.integer(),
    fc.string({ unit: 'grapheme', maxLength: 10 }),
    fc.array(tie('value'), { maxLength: 4 }),
    tie('object'),
  ),
  object: fc.dictionary(name, tie('value'), { maxKeys: 5 }),
}));

/** The same value with the members of every object in another order. */
function reordered(value: unknown, turn: number): unknown {
  if (Array.isArray(value)) return value.map((item) => reordered(item, turn));
  if (typeof value !== 'object' || value === null) return value;
  const members = Object.entries(value).map(([key, member]) => [key, reordered(member, turn)] as const);
  const at = members.length === 0 ? 0 : turn % members.length;
  return Object.fromEntries([...members.slice(at), ...members.slice(0, at)].reverse());
}

describe('canonical text', () => {
  it('is the same for any order of members', () => {
    fc.assert(
      fc.property(tree.value, fc.nat(7), (value, turn) => {
        expect(canonicalText(reordered(value, turn))).toBe(canonicalText(value));
        expect(digestOf(reordered(value, turn))).toBe(digestOf(value));
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });

  it('read back and written again is the same', () => {
    fc.assert(
      fc.property(tree.value, (value) => {
        const text = canonicalText(value);
        expect(canonicalText(JSON.parse(text))).toBe(text);
      }),
      RUN,
    );
  });

  it('differs where a member differs', () => {
    fc.assert(
      fc.property(tree.object, name, (object, key) => {
        const with1 = { ...object, [key]: 1 };
        const with2 = { ...object, [key]: 2 };
        expect(digestOf(with1)).not.toBe(digestOf(with2));
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  it('keeps the order of a list', () => {
    expect(canonicalText([3, 1, 2])).toBe('[3,1,2]');
  });

  it('sorts members by their code units, capitals first, and prints no blanks', () => {
    expect(canonicalText({ b: [1, { d: null, c: true }], a: 'x', B: 0.5, '€': '\u20ac', ö: '\n' })).toBe(
      '{"B":0.5,"a":"x","b":[1,{"c":true,"d":null}],"ö":"\\n","€":"€"}',
    );
  });

  it('leaves out what is undefined, and writes composed and decomposed letters alike', () => {
    expect(canonicalText({ a: undefined, b: 'e\u0301' })).toBe(canonicalText({ b: '\u00e9' }));
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('is refused for %d', (value) => {
    expect(() => canonicalText({ value })).toThrow();
  });

  it('is refused for what JSON has no word for', () => {
    for (const value of [() => 1, 1n, Symbol('x')]) expect(() => canonicalText([value])).toThrow();
  });
});

describe('numbers in canonical text', () => {
  it.each(SAMPLES)('RFC 8785, appendix B, %s is written %s', (bits, text) => {
    expect(canonicalText(fromBits(bits))).toBe(text);
  });

  it.each(NEIGHBOURS)('RFC 8785, appendix B, %s is told apart there and is %s at twelve digits', (bits, text) => {
    expect(canonicalText(fromBits(bits))).toBe(text);
  });

  it('are written the way the language writes them, after rounding', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(canonicalText(value)).toBe(String(roundNumber(value)));
      }),
      RUN,
    );
  });

  it('keep twelve digits, and rounding twice is rounding once', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: 1e-300, max: 1e300 }), (value) => {
        const rounded = roundNumber(value);
        expect(Math.abs(rounded - value)).toBeLessThanOrEqual(5.000001e-12 * Math.abs(value));
        expect(roundNumber(rounded)).toBe(rounded);
      }),
      RUN,
    );
  });

  it('that are whole are kept to the last unit as far as a double counts', () => {
    fc.assert(
      fc.property(
        fc.maxSafeInteger().filter((whole) => Math.abs(whole) < Number.MAX_SAFE_INTEGER),
        (whole) => {
          expect(canonicalText(whole)).toBe(String(whole === 0 ? 0 : whole));
        },
      ),
      RUN,
    );
  });
});
