import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const STEPS = 400; // even; the integral then holds to six digits for exponents from 1 to 2

/** Of the cosine raised to a power, over one turn; by Simpson's rule over a quarter of it. */
function cosineRaised(exponent: number): number {
  const width = Math.PI / 2 / STEPS;
  const at = (index: number): number => (index === STEPS ? 0 : Math.exp(exponent * Math.log(Math.cos(index * width))));
  let sum = at(0) + at(STEPS);
  for (let index = 1; index < STEPS; index += 1) sum += (index % 2 === 1 ? 4 : 2) * at(index);
  return (4 * sum * width) / 3;
}

/** Coefficient of the loss under a triangle from that under a sine, so that the improved generalised equation gives the loss of a sine back. */
export const triangleCoefficient = defineFormula({
  id: 'magnetics/triangle-coefficient',
  tex: String.raw`k_i = \dfrac{C_m}{2^{\beta - \alpha} (2\pi)^{\alpha - 1} \int_0^{2\pi} |\cos\theta|^\alpha\, d\theta}`,
  text: 'k_i = C_m / ( 2 ^ ( β − α ) · ( 2 · π ) ^ ( α − 1 ) · ∫ |cos θ| ^ α dθ )',
  source: cite('core-loss-data', 'improved generalised Steinmetz equation, its coefficient from that of a sine', 'secondary'),
  inputs: {
    coefficient: { symbol: 'C_m', unit: '1', means: 'coefficient of the ferrite under a sine, SI', moves: 'up' },
    alpha: { symbol: 'α', unit: '1', means: 'exponent of the frequency', from: 1, to: 2 },
    beta: { symbol: 'β', unit: '1', means: 'exponent of the amplitude' },
  },
  output: { symbol: 'k_i', unit: '1', means: 'coefficient of the ferrite under a triangle, SI' },
  validity: 'the range of frequency and the temperature for which the loss under a sine was fitted',
  compute: ({ coefficient, alpha, beta }) =>
    coefficient / (Math.exp((beta - alpha) * Math.log(2) + (alpha - 1) * Math.log(2 * Math.PI)) * cosineRaised(alpha)),
});
