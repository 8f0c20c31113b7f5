import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Loss of a ferrite core under a triangle of flux. */
export const coreLoss = defineFormula({
  id: 'magnetics/core-loss',
  tex: String.raw`P = A_e l_e k_i \Delta B^{\beta - \alpha} \left[D \left|\tfrac{\Delta B f}{D}\right|^\alpha + d \left|\tfrac{\Delta B f}{d}\right|^\alpha\right]`,
  text: 'P = A_e · l_e · k_i · dB ^ ( β − α ) · ( D · ( dB · f / D ) ^ α + d · ( dB · f / d ) ^ α )',
  source: cite('core-loss-data', 'improved generalised Steinmetz equation with the coefficients of the data set', 'secondary'),
  inputs: {
    area: { symbol: 'A_e', unit: 'm²', means: 'effective area of the core', moves: 'up' },
    length: { symbol: 'l_e', unit: 'm', means: 'effective length of the core', moves: 'up' },
    coefficient: { symbol: 'k_i', unit: '1', means: 'coefficient of the ferrite, SI', moves: 'up' },
    alpha: { symbol: 'α', unit: '1', means: 'exponent of the rate' },
    beta: { symbol: 'β', unit: '1', means: 'exponent of the swing' },
    swing: { symbol: 'dB', unit: 'T', means: 'swing of the flux density', moves: 'up' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'frequency of the switch', moves: 'up', from: 50e3, to: 500e3 },
    rise: { symbol: 'D', unit: '1', means: 'share of the period in which the flux rises' },
    fall: { symbol: 'd', unit: '1', means: 'share of the period in which it falls' },
  },
  output: { symbol: 'P', unit: 'W', means: 'loss of the core' },
  validity:
    'the temperature of its coefficients: 25 °C where they were measured, 100 °C where a maker prints the loss under a sine; the constant part of the flux of a flyback, which adds to the loss, is left out; 50 to 500 kHz',
  compute: ({ area, length, coefficient, alpha, beta, swing, frequency, rise, fall }) => {
    const raised = (base: number, exponent: number): number => Math.exp(exponent * Math.log(base));
    const leg = (share: number): number => share * raised((swing * frequency) / share, alpha);
    return area * length * coefficient * raised(swing, beta - alpha) * (leg(rise) + leg(fall));
  },
});
