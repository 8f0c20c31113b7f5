import { describe, expect, it } from 'vitest';
import { coreLoss } from '../../../src/core/formula/magnetics/core-loss.ts';
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

  // Ferroxcube, Design of planar power transformers: fit of 3C90 (0.0032, 1.46, 2.75) and its factor 2.45 - 0.031 T + 0.000165 T² at 95 °C
  it('3C90 at 120 kHz, 160 mT and 95 °C: 536 kW/m³ under a sine, 494 under a triangle, and the program of its maker prints 430', () => {
    const [alpha, beta, celsius] = [1.46, 2.75, 95];
    const coefficient = 0.0032 * MILLI_PER_CC * (2.45 - 0.031 * celsius + 0.000165 * celsius ** 2);
    expect((coefficient * 120e3 ** alpha * 0.16 ** beta) / 1e3).toBeCloseTo(536, -0.5);
    const own = triangleCoefficient.compute({ coefficient, alpha, beta });
    const halves = { area: 1, length: 1, swing: 0.32, frequency: 120e3, rise: 0.5, fall: 0.5 };
    const lost = coreLoss.compute({ ...halves, coefficient: own, alpha, beta }) / 1e3;
    expect(lost).toBeGreaterThan(492);
    expect(lost).toBeLessThan(496);
    expect(lost / 430).toBeLessThan(1.2);
  });

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
