import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodyCurrent } from '../../src/core/formula/insulation/body-current.ts';
import { layersOfDistance } from '../../src/core/formula/insulation/layers-of-distance.ts';
import { wayRoundEdge } from '../../src/core/formula/insulation/way-round-edge.ts';
import { boundaryCurrent } from '../../src/core/formula/magnetics/boundary-current.ts';
import { boundaryFrequency } from '../../src/core/formula/magnetics/boundary-frequency.ts';
import { boundaryPower } from '../../src/core/formula/magnetics/boundary-power.ts';
import { continuousPower } from '../../src/core/formula/magnetics/continuous-power.ts';
import { continuousRms } from '../../src/core/formula/magnetics/continuous-rms.ts';
import { continuousShare } from '../../src/core/formula/magnetics/continuous-share.ts';
import { fluxDensity } from '../../src/core/formula/magnetics/flux-density.ts';
import { gapBesideCore } from '../../src/core/formula/magnetics/gap-beside-core.ts';
import { gapOfInductance } from '../../src/core/formula/magnetics/gap-of-inductance.ts';
import { inductanceOfGap } from '../../src/core/formula/magnetics/inductance-of-gap.ts';
import { inductanceWithCore } from '../../src/core/formula/magnetics/inductance-with-core.ts';
import { layerFactor } from '../../src/core/formula/magnetics/layer-factor.ts';
import { powerOfStrokes } from '../../src/core/formula/magnetics/power-of-strokes.ts';
import { rippleCurrent } from '../../src/core/formula/magnetics/ripple-current.ts';
import { storedEnergy } from '../../src/core/formula/magnetics/stored-energy.ts';
import { strokeRms } from '../../src/core/formula/magnetics/stroke-rms.ts';
import { strokeShare } from '../../src/core/formula/magnetics/stroke-share.ts';
import { FEW, SEED } from './seed.ts';

const run = { numRuns: FEW, seed: SEED };
const within = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true });
const design = fc.record({
  inductance: within(1e-4, 5e-3),
  peak: within(0.1, 3),
  rail: within(60, 380),
  reflected: within(30, 180),
  frequency: within(30e3, 200e3),
});
const same = (a: number, b: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.abs(b));

describe('a flyback', () => {
  it('takes its energy stroke by stroke: energy times frequency is its power', () =>
    fc.assert(
      fc.property(design, (d) => {
        same(storedEnergy.compute(d) * d.frequency, powerOfStrokes.compute(d));
      }),
      run,
    ));

  it('at the edge of its mode takes the same power by every formula', () =>
    fc.assert(
      fc.property(design, ({ inductance, peak, rail, reflected }) => {
        const frequency = boundaryFrequency.compute({ inductance, peak, rail, reflected, wait: 0 });
        const power = boundaryPower.compute({ peak, rail, reflected });
        same(powerOfStrokes.compute({ inductance, peak, frequency }), power);
        same(boundaryCurrent.compute({ rail, reflected, inductance, frequency }), peak);
        const share = continuousShare.compute({ reflected, rail });
        const rise = rippleCurrent.compute({ rail, share, inductance, frequency });
        same(rise, peak);
        same(continuousPower.compute({ rail, share, peak, rise }), power);
        // rise and fall fill the period
        same(
          strokeShare.compute({ inductance, peak, frequency, voltage: rail }) +
            strokeShare.compute({ inductance, peak, frequency, voltage: reflected }),
          1,
        );
      }),
      run,
    ));

  it('draws its power as the mean of its current times the rail', () =>
    fc.assert(
      fc.property(design, ({ inductance, peak, rail, frequency }) => {
        const on = strokeShare.compute({ inductance, peak, frequency, voltage: rail });
        same((peak / 2) * on * rail, powerOfStrokes.compute({ inductance, peak, frequency }));
      }),
      run,
    ));

  it('has an rms between its mean and its peak, and a trapezoid without pedestal is a triangle', () =>
    fc.assert(
      fc.property(within(0.1, 5), within(0.01, 0.99), (peak, share) => {
        const rms = strokeRms.compute({ peak, share });
        expect(rms).toBeGreaterThan((peak * share) / 2);
        expect(rms).toBeLessThan(peak);
        same(continuousRms.compute({ peak, rise: peak, share }), rms);
      }),
      run,
    ));

  it('scales: twice the turns and twice the area make a quarter of the flux, and the gap grows back into the inductance', () =>
    fc.assert(
      fc.property(within(1e-4, 5e-3), within(0.1, 3), within(10, 200), within(5e-6, 1e-4), (inductance, peak, turns, area) => {
        same(
          fluxDensity.compute({ inductance, peak, turns: 2 * turns, area: 2 * area }) * 4,
          fluxDensity.compute({ inductance, peak, turns, area }),
        );
        const ungapped = (3 * inductance) / (turns * turns);
        const gap = gapBesideCore.compute({ turns, area, inductance, ungapped });
        same(inductanceWithCore.compute({ turns, area, gap, ungapped }), inductance);
        expect(gap).toBeLessThan(gapOfInductance.compute({ turns, area, inductance }));
        same(inductanceOfGap.compute({ turns, area, gap: gapOfInductance.compute({ turns, area, inductance }) }), inductance);
      }),
      run,
    ));

  it('loses no less at a frequency than to direct current, and the more layers the more', () =>
    fc.assert(
      fc.property(within(0.05, 3), fc.integer({ min: 1, max: 8 }), (diameter, layers) => {
        const one = layerFactor.compute({ diameter, depth: 1, layers, filled: 1 });
        expect(one).toBeGreaterThanOrEqual(1 - 1e-9);
        expect(layerFactor.compute({ diameter, depth: 1, layers: layers + 1, filled: 1 })).toBeGreaterThanOrEqual(one - 1e-9);
      }),
      run,
    ));
});

describe('a distance in layers', () => {
  it('is one at basic, two at reinforced, and grows with the distance', () =>
    fc.assert(
      fc.property(within(1e-4, 5e-3), within(1.1, 3), within(0, 0.02), within(0, 0.01), (basic, factor, distance, more) => {
        const reinforced = basic * factor;
        const of = (d: number): number => layersOfDistance.compute({ distance: d, basic, reinforced });
        same(of(basic), 1);
        same(of(reinforced), 2);
        expect(of(distance + more)).toBeGreaterThanOrEqual(of(distance) - 1e-12);
      }),
      run,
    ));

  it('round an edge is no shorter for a wider margin and no longer for a tape that stops sooner', () =>
    fc.assert(
      fc.property(within(0, 5e-3), within(0, 5e-3), within(0, 5e-3), within(0, 2e-3), (inner, outer, short, more) => {
        const of = (m: number, s: number): number => wayRoundEdge.compute({ inner: m, outer, short: s, thickness: 1e-4 });
        expect(of(inner + more, short)).toBeGreaterThanOrEqual(of(inner, short));
        expect(of(inner, short + more)).toBeLessThanOrEqual(of(inner, short));
      }),
      run,
    ));

  it('a body lets more through the less it resists', () =>
    fc.assert(
      fc.property(within(500, 6000), within(1, 1000), (impedance, more) => {
        expect(bodyCurrent.compute({ voltage: 230, impedance })).toBeGreaterThan(
          bodyCurrent.compute({ voltage: 230, impedance: impedance + more }),
        );
      }),
      run,
    ));
});
