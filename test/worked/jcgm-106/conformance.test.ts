import { describe, expect, it } from 'vitest';
import { normalBelow } from '../../../src/core/uncertainty/normal.ts';

/** JCGM 106:2012. Probabilities of a normal distribution about a measured value. */
const within = (value: number, u: number, least: number, most: number): number =>
  normalBelow((most - value) / u) - normalBelow((least - value) / u);

describe('JCGM 106, 7.4: 13.6 with u = 1.8 against 12.5 to 16.3', () => {
  it('conforms with a probability of 0.663', () => {
    expect(Math.abs(within(13.6, 1.8, 12.5, 16.3) - 0.663)).toBeLessThanOrEqual(0.0005);
  });

  it('is as likely to conform when everything is measured from the other end', () => {
    expect(within(-13.6, 1.8, -16.3, -12.5)).toBeCloseTo(within(13.6, 1.8, 12.5, 16.3), 14);
  });
});

describe('one-sided limits', () => {
  it('are kept with 95 % at a guard of 1.645 standard uncertainties', () => {
    expect(Math.abs(normalBelow(1.645) - 0.95)).toBeLessThanOrEqual(0.0001);
  });

  it('are kept with 97.7 % at a guard of two standard uncertainties', () => {
    expect(Math.abs(normalBelow(2) - 0.977)).toBeLessThanOrEqual(0.0005);
  });

  it('of 5.25 V are kept by 5.20 V with u = 0.02 V at 0.9938', () => {
    expect(Math.abs(normalBelow((5.25 - 5.2) / 0.02) - 0.9938)).toBeLessThanOrEqual(0.00005);
  });
});
