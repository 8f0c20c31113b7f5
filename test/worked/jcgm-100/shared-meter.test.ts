import { describe, expect, it } from 'vitest';
import { combine } from '../../../src/core/trace/combine.ts';
import { type Derived, given, uncertainty } from '../../../src/core/trace/derived.ts';
import { doubtOfReading } from '../../../src/core/working/bench/doubt-of-reading.ts';
import { meter } from '../meter-makers/meter.ts';

/** JCGM 100:2008, F.1.2.3: readings with one instrument are correlated through it. */
const READINGS = 20;
const SHOWN_V = 5;
const LAST_DIGIT_V = 0.001;
const GAIN_U_V = (0.01 * SHOWN_V) / Math.sqrt(3);
/** A sheet adds its parts, so digits are what is missing between the gain and one rectangle as wide as the whole bound. */
const digitsU = (shownV: number): number => Math.sqrt((0.01 * shownV + 4 * LAST_DIGIT_V) ** 2 - (0.01 * shownV) ** 2) / Math.sqrt(3);
const DIGITS_U_V = digitsU(SHOWN_V);

function reading(index: number, value: number, more: { day?: string; accuracy?: string } = {}): Derived {
  const form = doubtOfReading({
    instrument: meter(more.accuracy ?? '1 % + 4'),
    role: 'outputVoltage',
    day: more.day ?? 'd1',
    field: `/rows/${index}`,
    value,
    lastDigit: LAST_DIGIT_V,
  });
  if (form === null) throw new Error('the meter says nothing');
  return given('reading', value, 'V', { id: `row/${index}`, name: 'V' }, { form });
}

function meanOf(readings: readonly Derived[]): Derived {
  const inputs = Object.fromEntries(readings.map((one, index) => [`v${index}`, one]));
  return combine(
    {
      kind: 'reduce',
      unit: 'V',
      formula: null,
      symbols: Object.fromEntries(Object.keys(inputs).map((name) => [name, name])),
      compute: (plain) => Object.values(plain).reduce((sum, value) => sum + value, 0) / readings.length,
    },
    inputs,
    { id: 'mean', name: 'mean' },
  );
}

function slopeOf(low: Derived, high: Derived, amperes: number): Derived {
  return combine(
    {
      kind: 'formula',
      unit: 'Ω',
      formula: null,
      symbols: { low: 'V_a', high: 'V_b' },
      compute: (plain) => (plain.high - plain.low) / amperes,
    },
    { low, high },
    { id: 'slope', name: 'slope' },
  );
}

const u = (one: Derived): number => uncertainty(one) ?? Number.NaN;

describe('twenty readings with one meter', () => {
  const mean = meanOf(Array.from({ length: READINGS }, (_, index) => reading(index, SHOWN_V)));

  it('do not beat the gain of that meter', () => {
    expect(u(mean)).toBeGreaterThanOrEqual(GAIN_U_V * (1 - 1e-9));
  });

  it('average out the digits only', () => {
    expect(u(mean)).toBeCloseTo(Math.hypot(GAIN_U_V, DIGITS_U_V / Math.sqrt(READINGS)), 9);
  });

  it('on twenty days with twenty gains do beat one gain', () => {
    const spread = meanOf(Array.from({ length: READINGS }, (_, index) => reading(index, SHOWN_V, { day: `d${index}` })));
    expect(u(spread)).toBeCloseTo(Math.hypot(GAIN_U_V, DIGITS_U_V) / Math.sqrt(READINGS), 9);
  });
});

describe('a slope between two readings with one meter', () => {
  it('does not suffer from an offset that both readings share', () => {
    const [low, high] = [reading(0, 4.9, { accuracy: '0.05 V' }), reading(1, 5.1, { accuracy: '0.05 V' })];
    const lastDigits = Math.hypot(LAST_DIGIT_V, LAST_DIGIT_V) / Math.sqrt(12);
    expect(u(slopeOf(low, high, 2))).toBeCloseTo(lastDigits / 2, 9);
  });

  it('suffers from the gain in proportion to the slope only, not to the readings', () => {
    const [low, high] = [reading(0, 4.9), reading(1, 5.1)];
    const share = ((5.1 - 4.9) * 0.01) / Math.sqrt(3);
    expect(u(slopeOf(low, high, 2))).toBeCloseTo(Math.hypot(share, digitsU(4.9), digitsU(5.1)) / 2, 9);
    const asIfApart = Math.hypot(4.9, 5.1) * (0.01 / Math.sqrt(3));
    expect(u(slopeOf(low, high, 2))).toBeLessThan(asIfApart / 2);
  });

  it('suffers from both gains when the readings come from two days', () => {
    const [low, high] = [reading(0, 4.9), reading(1, 5.1, { day: 'd2' })];
    const apart = Math.hypot(4.9, 5.1) * (0.01 / Math.sqrt(3));
    expect(u(slopeOf(low, high, 2))).toBeCloseTo(Math.hypot(apart, digitsU(4.9), digitsU(5.1)) / 2, 9);
  });

  it('is exactly zero uncertain where a reading is taken from itself', () => {
    const one = reading(0, SHOWN_V);
    expect(u(slopeOf(one, one, 2))).toBe(0);
  });
});

describe('how a data sheet means its accuracy', () => {
  const uOf = (basis: 'statedLimit' | 'standard' | 'expanded2'): number => {
    const form = doubtOfReading({
      instrument: meter('1 %', basis),
      role: 'outputVoltage',
      day: 'd1',
      field: '/v',
      value: 100,
      lastDigit: 1e-9,
    });
    return u(given('reading', 100, 'V', { id: 'v', name: 'V' }, { form: form ?? new Map() }));
  };

  it('turns one volt into 1/√3 V as a limit, 1 V as a standard and 0.5 V as an expanded uncertainty', () => {
    expect(uOf('statedLimit')).toBeCloseTo(1 / Math.sqrt(3), 9);
    expect(uOf('standard')).toBeCloseTo(1, 9);
    expect(uOf('expanded2')).toBeCloseTo(0.5, 9);
  });
});
