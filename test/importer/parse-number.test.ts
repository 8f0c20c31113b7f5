import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { readFastColumns } from '../../src/importer/fast-columns.ts';
import { parseNumber } from '../../src/importer/parse-number.ts';

const SEED = 20_311_127;
const CASES = 100_000; // three writers of numbers: 300,000 cases in all

const digits = (most: number) => fc.stringMatching(new RegExp(`^[0-9]{1,${most}}$`));
const sign = fc.constantFrom('', '-', '+');
const exponent = fc.oneof(
  { weight: 2, arbitrary: fc.constant('') },
  fc.tuple(fc.constantFrom('e', 'E'), sign, fc.integer({ min: 0, max: 340 }).map(String)).map((parts) => parts.join('')),
  fc
    .tuple(
      fc.constantFrom('e', 'E'),
      sign,
      fc.integer({ min: 0, max: 24 }).map((n) => String(n).padStart(2, '0')),
    )
    .map((parts) => parts.join('')),
);
const written = fc
  .tuple(
    sign,
    fc.oneof(digits(4), digits(17), digits(25)),
    fc.oneof(
      fc.constant(''),
      digits(6).map((d) => `.${d}`),
      digits(22).map((d) => `.${d}`),
    ),
    exponent,
  )
  .map((parts) => parts.join(''));
const printed = fc
  .tuple(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer({ min: 1, max: 17 }))
  .map(([value, places]) => value.toExponential(places));
const fixed = fc
  .tuple(fc.double({ noNaN: true, min: -1e6, max: 1e6 }), fc.integer({ min: 0, max: 12 }))
  .map(([value, places]) => value.toFixed(places));

/** What both readers make of the text, beside the language's own conversion. */
function agrees(text: string): boolean {
  const truth = Number(text);
  if (!Object.is(parseNumber(text, 'point'), truth)) return false;
  if (!Object.is(parseNumber(text.replace('.', ','), 'comma'), truth)) return false;
  const table = readFastColumns([new TextEncoder().encode(`${text},${text}\n`)], { separator: 'comma', columns: 2, totalBytes: 1 });
  return !isRefusal(table) && table.rows === 1 && Object.is(table.columns[0]![0], truth) && Object.is(table.columns[1]![0], truth);
}

describe('numbers are rounded exactly as the language rounds them', () => {
  for (const [name, arbitrary] of [
    ['digits put together at random', written],
    ['any double printed with an exponent', printed],
    ['everyday numbers printed with fixed places', fixed],
  ] as const) {
    it(name, () => {
      fc.assert(fc.property(arbitrary, agrees), { numRuns: CASES, seed: SEED });
    });
  }
});

describe('what is no plain number is none', () => {
  it.each([
    '',
    '-',
    '+',
    '.',
    'e5',
    '1e',
    '1e+',
    '1.2.3',
    '1,2',
    '0x10',
    '1_0',
    ' 1',
    '1 ',
    'NaN',
    'Infinity',
    '1e5.',
    '--1',
    '1-',
    '12:30',
    '５',
  ])('"%s"', (text) => {
    expect(parseNumber(text, 'point')).toBeNaN();
  });

  it('a typographic minus is a minus', () => {
    expect(parseNumber('\u22125.25', 'point')).toBe(-5.25);
    expect(parseNumber('\u22121234567890123456789', 'point')).toBe(Number('-1234567890123456789'));
  });

  it('a number keeps its sign when it is zero', () => {
    expect(Object.is(parseNumber('-0.000', 'point'), -0)).toBe(true);
  });
});
