import { describe, expect, it } from 'vitest';
import { rectangular, resolution, triangular } from '../../../src/core/uncertainty/half-width.ts';
import { END_GAUGE } from './h1.ts';

/** Standard uncertainties that JCGM 100:2008 prints in table H.1 for half widths that it states in the text. */
describe('half widths of JCGM 100', () => {
  it.each([
    ['expansionOfStandard', 1.2e-6, 0.05e-6],
    ['differenceOfExpansion', 0.58e-6, 0.005e-6],
    ['differenceOfTemperature', 0.029, 0.0005],
  ] as const)('H.1: the half width of %s is printed as a standard uncertainty of %d', (name, printed, tolerance) => {
    expect(Math.abs(rectangular(END_GAUGE[name].halfWidth) - printed)).toBeLessThanOrEqual(tolerance);
  });

  it('4.3.9: a triangle has a sixth of the square, half of the variance of a rectangle', () => {
    expect(triangular(3) ** 2).toBeCloseTo(9 / 6, 12);
    expect(rectangular(3) ** 2 / triangular(3) ** 2).toBeCloseTo(2, 12);
  });

  it('F.2.2.1: a display of one step has 0.29 of a step', () => {
    expect(resolution(1)).toBeCloseTo(0.29, 2);
    expect(resolution(1)).toBeCloseTo(rectangular(0.5), 15);
  });
});
