import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { normalBelow } from '../../src/core/uncertainty/normal.ts';
import { NORMAL_REFERENCE } from './normal-reference.ts';

const CLOSE = 1e-12;
/** Just before the series for the middle gives way to the fraction for the tails, its terms cancel: up to 5e-12 is lost there. */
const CANCELS = { from: -3.54, to: -3.2, loses: 1e-11 } as const;
/** Below, the other package takes 1 - erf of a number near 1 and keeps an absolute, not a relative, precision. */
const OTHER_PACKAGE_GOOD_FROM = -4;
const LAST_BIT_OF_ONE = 2 ** -52;

const grid = Array.from({ length: 65 }, (_, index) => -8 + index / 4);
const relative = (found: number, true_: number): number => Math.abs(found - true_) / true_;
const allowed = (z: number): number => (z >= CANCELS.from && z <= CANCELS.to ? CANCELS.loses : CLOSE);

/**
 * Upper tail beyond x by its asymptotic expansion, φ(x)/x (1 - 1/x² + 3/x⁴ - 15/x⁶ ...): the terms alternate, so two neighbouring partial
 * sums hold the true value between them. Taken where the terms are smallest.
 */
function tailBounds(x: number): { least: number; most: number } {
  const front = Math.exp((-x * x) / 2) / (x * Math.sqrt(2 * Math.PI));
  let term = 1;
  let sum = 1;
  for (let k = 1; ; k += 1) {
    const next = (-term * (2 * k - 1)) / (x * x);
    if (Math.abs(next) >= Math.abs(term)) {
      const other = sum - term;
      return { least: front * Math.min(sum, other), most: front * Math.max(sum, other) };
    }
    term = next;
    sum += term;
  }
}

describe('the share of a normal distribution below z', () => {
  it.each(grid.filter((z) => z >= OTHER_PACKAGE_GOOD_FROM))('agrees with the statistics package at %d', (z) => {
    expect(relative(normalBelow(z), jstat.normal.cdf(z, 0, 1))).toBeLessThanOrEqual(allowed(z));
  });

  it.each(grid.filter((z) => z < OTHER_PACKAGE_GOOD_FROM))('agrees with the statistics package to its last bit at %d', (z) => {
    expect(Math.abs(normalBelow(z) - jstat.normal.cdf(z, 0, 1))).toBeLessThanOrEqual(LAST_BIT_OF_ONE);
  });

  it.each([5, 5.5, 6, 6.5, 7, 7.5, 8])('lies between the bounds of the tail expansion %d standard deviations out', (x) => {
    const { least, most } = tailBounds(x);
    const LAST_BITS = 4e-15;
    expect(normalBelow(-x)).toBeGreaterThanOrEqual(least * (1 - LAST_BITS));
    expect(normalBelow(-x)).toBeLessThanOrEqual(most * (1 + LAST_BITS));
  });

  it('is pinned to 1e-12 by that expansion at 8, where the statistics package is 2 % off and outside', () => {
    const { least, most } = tailBounds(8);
    expect((most - least) / most).toBeLessThan(CLOSE);
    expect(relative(normalBelow(-8), most)).toBeLessThan(CLOSE);
    expect(relative(jstat.normal.cdf(-8, 0, 1), most)).toBeGreaterThan(0.01);
  });

  it.each(NORMAL_REFERENCE)('at %d is what arithmetic with 40 digits gives', (z, below) => {
    expect(relative(normalBelow(z), below)).toBeLessThanOrEqual(allowed(z));
  });

  it('and the share above it make one', () => {
    for (const z of grid) expect(Math.abs(normalBelow(z) + normalBelow(-z) - 1)).toBeLessThanOrEqual(LAST_BIT_OF_ONE);
  });

  it('grows with z, also where one method hands over to the other', () => {
    const HAND_OVER = 2.5 * Math.SQRT2;
    const near = [-1, 1].flatMap((side) => Array.from({ length: 401 }, (_, index) => side * HAND_OVER + (index - 200) * 1e-5));
    const all = [...grid.filter((z) => z < 8), ...near].sort((a, b) => a - b);
    const shares = all.map(normalBelow);
    expect(shares.every((share, index) => index === 0 || share >= shares[index - 1]!)).toBe(true);
  });

  it('is nothing and everything at the two infinities', () => {
    expect(normalBelow(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(normalBelow(Number.POSITIVE_INFINITY)).toBe(1);
  });
});
