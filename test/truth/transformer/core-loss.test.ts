import { describe, expect, it } from 'vitest';
import { triangleCoefficient } from '../../../src/core/formula/magnetics/triangle-coefficient.ts';
import { triangle } from '../../../src/core/table/ferrite-loss/2023/triangle.ts';
import { steinmetz } from '../../../src/core/table/planar-notes/undated/steinmetz.ts';
import { judge } from '../build-case.ts';
import { electrical } from './electrical-case.ts';

const SAMPLES = 20_000;
const MILLI_PER_CC = 1e3; // W in a cubic metre for each mW in a cubic centimetre

/** Mean of |dB/dt| raised to a power, over one period of a sine of amplitude 1 T and 1 Hz, sample by sample. */
function meanOfRate(exponent: number): number {
  let sum = 0;
  for (let index = 0; index < SAMPLES; index += 1)
    sum += Math.abs(2 * Math.PI * Math.cos((2 * Math.PI * (index + 0.5)) / SAMPLES)) ** exponent;
  return sum / SAMPLES;
}

describe('the loss of a ferrite under a triangle, from what its maker prints for a sine', () => {
  it.each(steinmetz.rows.map(([name, ...figures]) => [name, figures] as const))(
    '%s: a sine put through the equation of the triangle loses what is printed for a sine',
    (_, [printed = 0, alpha = 0, beta = 0]) => {
      const coefficient = printed * MILLI_PER_CC;
      const own = triangleCoefficient.compute({ coefficient, alpha, beta });
      // amplitude 1 T is a swing of 2 T; at 1 Hz the printed fit gives its coefficient back
      expect(own * 2 ** (beta - alpha) * meanOfRate(alpha)).toBeCloseTo(coefficient, 6);
    },
  );

  it('a ferrite of either table has a loss, one of neither says what is missing', () => {
    const lossWith = (ferrite: string) => {
      const [sheet] = judge(electrical({ stack: { ferrite } })).transformers ?? [];
      return {
        worked: sheet?.numbers.find(({ key }) => key === 'coreLoss')?.value.value,
        blocked: sheet?.blocked.find(({ key }) => key === 'coreLoss'),
      };
    };
    for (const [name] of [...triangle.rows, ...steinmetz.rows]) expect(lossWith(String(name)).worked, String(name)).toBeGreaterThan(0);
    expect(lossWith('XX 9')).toEqual({ worked: undefined, blocked: { key: 'coreLoss', missing: ['ferriteWithData'] } });
  });
});
