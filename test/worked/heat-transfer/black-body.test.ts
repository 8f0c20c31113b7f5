import { describe, expect, it } from 'vitest';
import { blackBodyShare } from '../../../src/core/formula/black-body-share.ts';
import { trueTemperature } from '../../../src/core/formula/thermal/true-temperature.ts';
import { trueTemperatureInBand } from '../../../src/core/formula/thermal/true-temperature-in-band.ts';

/*
 * Shares of black-body radiation below λT, as heat transfer textbooks print them (the six-digit table of radiation functions; figures from
 * memory, the edition not at hand), and Wien's displacement law with a quarter of the radiation below the peak (2898 µm K).
 */
const PRINTED = [
  [2000, 0.066728],
  [3000, 0.273232],
  [4000, 0.480877],
  [5000, 0.633747],
  [6000, 0.737818],
  [8000, 0.856288],
  [10_000, 0.914199],
] as const;

describe('the share of a black body below a wavelength', () => {
  it.each(PRINTED)('at %d µm K is as printed: %d', (product, printed) => {
    expect(Math.abs(blackBodyShare(product) - printed)).toBeLessThan(5e-5); // printed tables round the radiation constant
  });

  it('is a quarter below the peak, and all of it far beyond', () => {
    expect(blackBodyShare(2897.77)).toBeCloseTo(0.25, 3);
    expect(blackBodyShare(1e6)).toBeCloseTo(1, 4);
  });
});

describe('the two models of a camera', () => {
  const kelvin = (celsius: number): number => celsius + 273.15;
  const seen = (emissivity: number): Parameters<typeof trueTemperature.compute>[0] => ({
    shown: kelvin(60),
    cameraEmissivity: 0.95,
    emissivity,
    reflected: kelvin(25),
  });

  it('lie within a quarter of a kelvin where the emissivity is nearly the one set', () => {
    const [fourth, band] = [trueTemperature.compute(seen(0.9)), trueTemperatureInBand.compute(seen(0.9))];
    expect(fourth - 273.15).toBeCloseTo(61.6, 1); // the figure of the fourth-power model
    expect(Math.abs(fourth - band)).toBeLessThan(0.25);
    expect(Math.abs(fourth - band)).toBeGreaterThan(0.01);
  });

  it('follow exponents of 4 and about 4.4 at 330 K: 14388 / (10 T)', () => {
    // small steps: dT/T ≈ (dW/W)/n; a surface of 0.94 instead of 0.95 against a reflection at 0 K radiates 1/0.94 - 1/0.95 more
    const at = (compute: (p: Parameters<typeof trueTemperature.compute>[0]) => number): number =>
      compute({ shown: 330, cameraEmissivity: 0.95, emissivity: 0.94, reflected: 160 });
    const exponent = (t: number): number => Math.log(0.95 / 0.94) / Math.log(t / 330);
    expect(exponent(at(trueTemperature.compute))).toBeCloseTo(4, 0);
    expect(exponent(at(trueTemperatureInBand.compute))).toBeGreaterThan(4.1);
    expect(exponent(at(trueTemperatureInBand.compute))).toBeLessThan(4.7);
  });
});
