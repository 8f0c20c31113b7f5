import { describe, expect, it } from 'vitest';
import type { Instrument } from '../../../src/core/evidence/instrument.ts';
import { boundOf, parseAccuracy } from '../../../src/core/quantity/accuracy.ts';
import { isRefusal } from '../../../src/core/quantity/refusal.ts';
import { uncertaintyOf } from '../../../src/core/trace/leaf.ts';
import { doubtOfReading } from '../../../src/core/working/bench/doubt-of-reading.ts';

const METER: Instrument = {
  id: 'm1',
  name: 'meter',
  ranges: [
    { of: 'outputVoltage', upTo: '100 V', accuracy: '2 %', basis: 'standard' },
    { of: 'outputVoltage', upTo: '10 V', accuracy: '1 %', basis: 'standard' },
  ],
};
const SMALL_STEP = 1e-9; // so that the last digit does not count here

function uOf(value: number): number | null {
  const form = doubtOfReading({ instrument: METER, role: 'outputVoltage', day: 'd1', field: '/v', value, lastDigit: SMALL_STEP });
  return form === null ? null : uncertaintyOf(form);
}

describe('a meter of two ranges', () => {
  it('reads in the smallest range that holds the value, its end included', () => {
    expect(uOf(5)).toBeCloseTo(0.05, 9);
    expect(uOf(10)).toBeCloseTo(0.1, 9);
    expect(uOf(10.1)).toBeCloseTo(0.202, 9);
    expect(uOf(-10)).toBeCloseTo(0.1, 9);
  });

  it('says nothing of what lies beyond', () => {
    expect(uOf(100.1)).toBeNull();
  });
});

describe('an accuracy', () => {
  it('counts a bare number as digits behind a percentage and refuses it alone', () => {
    const stated = parseAccuracy('0.5 % + 3', 'voltage');
    expect(isRefusal(stated) ? stated.code : stated.digits).toBe(3);
    expect(isRefusal(parseAccuracy('3', 'voltage'))).toBe(true);
  });

  it('of whichever is greater is the greater, at both ends of the scale', () => {
    const stated = parseAccuracy('2 % or 2 K, whichever is greater', 'temperature');
    if (isRefusal(stated)) throw new Error(stated.code);
    expect(boundOf(stated, 50, 0.1)).toBeCloseTo(2, 12);
    expect(boundOf(stated, 400, 0.1)).toBeCloseTo(8, 12);
  });
});
