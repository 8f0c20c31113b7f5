import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeMarking } from '../../src/core/marking/decode-marking.ts';
import { PARTS, type Reading } from '../../src/core/marking/reading.ts';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { GRADES } from '../../src/core/source/grade.ts';
import { SEED } from '../property/seed.ts';

const RUNS = 20_000;
const MARK_CHARACTERS = [...'0123456789RKMGTLmpnuµFHVXYZABCDEJNQSWkr.,/~% ±'];
const likeAMark = fc.array(fc.constantFrom(...MARK_CHARACTERS), { maxLength: 9 }).map((characters) => characters.join(''));
const likeWords = fc
  .array(fc.constantFrom('104', '222M', '2A', 'X2', 'Y1', 'Y2', '400V', '275V~', 'K', '5%', 'red', 'gold', '0.1uF', '100', '±10%', '4n7'), {
    maxLength: 5,
  })
  .map((words) => words.join(' '));
const anyPart = fc.constantFrom(undefined, ...PARTS);
const KINDS_OF: Readonly<Record<string, readonly string[]>> = {
  resistor: ['resistor', 'jumper'],
  capacitor: ['capacitor', 'voltage-rating', 'safety-class'],
  inductor: ['inductor'],
  diode: ['diode'],
};

function figuresOf({ value, tolerance, temperatureCoefficient, voltage, safetyClasses }: Reading): number[] {
  const classVoltages = safetyClasses.map((one) => one.voltage);
  return [value, tolerance?.minus, tolerance?.plus, temperatureCoefficient, voltage, ...classVoltages].filter(
    (one) => one !== null && one !== undefined,
  );
}

function expectSound(text: string, part: (typeof PARTS)[number] | undefined): void {
  const decoded = decodeMarking(text, part);
  if (isRefusal(decoded)) {
    expect(sentence(decoded)).toContain('expected');
    return;
  }
  expect(decoded.text).toBe(text);
  expect(decoded.readings.length).toBeGreaterThan(0);
  expect(decoded.settledBy.length > 0).toBe(decoded.readings.length > 1);
  for (const reading of decoded.readings) {
    for (const figure of figuresOf(reading)) expect(Number.isFinite(figure) && figure >= 0, `${text}: ${figure}`).toBe(true);
    expect(reading.value === 0).toBe(reading.kind === 'jumper');
    expect(reading.value === null).toBe(reading.kind === 'safety-class');
    expect(GRADES).toContain(reading.source.grade);
    if (part !== undefined) expect(KINDS_OF[part], `${text} as ${part}`).toContain(reading.kind);
  }
  const distinct = new Set(
    decoded.readings.map(({ kind, value, tolerance, voltage, temperatureCoefficient, safetyClasses }) =>
      JSON.stringify([kind, value, tolerance, voltage, temperatureCoefficient, safetyClasses]),
    ),
  );
  expect(distinct.size).toBe(decoded.readings.length);
}

describe('any text', () => {
  test('is read into sound figures or refused', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), anyPart, expectSound), { seed: SEED, numRuns: RUNS });
  });
  test('that looks like a mark is read into sound figures or refused', () => {
    fc.assert(fc.property(likeAMark, anyPart, expectSound), { seed: SEED, numRuns: RUNS });
  });
  test('of words that stand on parts is read into sound figures or refused', () => {
    fc.assert(fc.property(likeWords, anyPart, expectSound), { seed: SEED, numRuns: RUNS });
  });
  test('as one part gives no meaning that it does not give without saying the part', () => {
    fc.assert(
      fc.property(likeAMark, fc.constantFrom(...PARTS), (text, part) => {
        const narrowed = decodeMarking(text, part);
        if (isRefusal(narrowed)) return;
        const open = decodeMarking(text);
        const all = isRefusal(open) ? [] : open.readings.map(({ kind, value }) => `${kind} ${value}`);
        // a mark in small letters is read again in capitals only when nothing else fits, which naming the part can bring about
        if (narrowed.readings.some(({ notes }) => notes.includes('letter-case-matters'))) return;
        for (const { kind, value } of narrowed.readings) expect(all, text).toContain(`${kind} ${value}`);
      }),
      { seed: SEED, numRuns: RUNS },
    );
  });
  test.each(['', '   ', '9'.repeat(500), 'zz', 'ABC', '12345678', 'Y1 Y1 Y1 104 105 106'])('"%s" is refused in one sentence', (text) => {
    const decoded = decodeMarking(text);
    expect(isRefusal(decoded) && sentence(decoded)).toMatch(/^got ".*", expected a marking/s);
  });
  test('names the part that was asked for when it is refused', () => {
    const decoded = decodeMarking('4K7', 'diode');
    expect(isRefusal(decoded) && decoded.expected).toContain('diode');
  });
});
