import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const COLDEST_K = 313.15; // makers give no figures below 40 °C
const LONGEST_S = 15 * 8766 * 3600; // and answer with 15 years at most
const DOUBLES_K = 10; // the life doubles for every 10 K less

const power2 = (x: number): number => Math.exp(Math.LN2 * x);
/** How much the heat of its own ripple shortens the life, in doublings. */
const ripple = (own: number): number => own / (DOUBLES_K - own / 4);

/** Expected life of a wet electrolytic capacitor from new: doubled for every 10 K below its rated temperature, less what its own ripple heats. */
export const lifeFromNew = defineFormula({
  id: 'endurance/life-from-new',
  tex: String.raw`L = L_0\, 2^{\frac{T_0 - T_a}{10}}\, 2^{\frac{\Delta T_0}{10 - \Delta T_0/4} - \frac{\Delta T}{10 - \Delta T/4}}`,
  text: 'L = L_0 · 2^(( T_0 − T_a )/10) · 2^( ΔT_0 /(10 − ΔT_0 /4) − ΔT /(10 − ΔT /4))',
  source: cite('capacitor-makers', 'one maker’s lifetime formula; its 10 K rule is that of several makers', 'secondary', {
    disagrees: [
      'another maker lets the ripple count double or fourfold for every 10 K; voltage lengthens the life of large cans a little, of small ones not',
    ],
  }),
  inputs: {
    rated: { symbol: 'L_0', unit: 's', means: 'life as rated', moves: 'up' },
    ratedTemperature: { symbol: 'T_0', unit: 'K', means: 'temperature at which it is rated', moves: 'up' },
    around: { symbol: 'T_a', unit: 'K', means: 'temperature around the can; below 40 °C taken as 40 °C', moves: 'down' },
    ratedHeating: { symbol: 'ΔT_0', unit: 'ΔK', means: 'heating of the core by the rated ripple', from: 0, to: 10 },
    heating: { symbol: 'ΔT', unit: 'ΔK', means: 'heating of the core by its own ripple', moves: 'down', from: 0, to: 20 },
  },
  output: { symbol: 'L', unit: 's', means: 'expected life from new at this duty', show: 'hours' },
  validity:
    'up to the rated temperature; 15 years at most; the end is a fifth less capacitance or twice the losses, not a failure; counted from new',
  compute: ({ rated, ratedTemperature, around, ratedHeating, heating }) =>
    Math.min(
      LONGEST_S,
      rated * power2((ratedTemperature - Math.max(around, COLDEST_K)) / DOUBLES_K) * power2(ripple(ratedHeating) - ripple(heating)),
    ),
  branch: ({ around }) => (around < COLDEST_K ? 'below40' : 'above40'),
});
