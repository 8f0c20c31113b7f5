import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** How the rise of a part follows the loss of the unit, from readings at two loads. */
export const exponentOfLoss = defineFormula({
  id: 'thermal/exponent-of-loss',
  tex: String.raw`k = \frac{\ln(\Delta T_2 / \Delta T_1)}{\ln(P_2 / P_1)}`,
  text: 'k = ln(( T_2 − T_b ) / ( T_1 − T_a )) / ln( P_2 / P_1 )',
  source: cite('heat-theory', 'a power law through two readings', 'reasoned'),
  inputs: {
    first: { symbol: 'T_1', unit: 'K', means: 'temperature at the smaller loss' },
    firstAmbient: { symbol: 'T_a', unit: 'K', means: 'ambient then' },
    second: { symbol: 'T_2', unit: 'K', means: 'temperature at the greater loss' },
    secondAmbient: { symbol: 'T_b', unit: 'K', means: 'ambient then' },
    smaller: { symbol: 'P_1', unit: 'W', means: 'smaller loss' },
    greater: { symbol: 'P_2', unit: 'W', means: 'greater loss' },
  },
  output: { symbol: 'k', unit: '1', means: 'how the rise follows the loss' },
  validity: 'losses at least 1.3 times apart, both settled, the same mains and cover',
  compute: ({ first, firstAmbient, second, secondAmbient, smaller, greater }) =>
    Math.log((second - secondAmbient) / (first - firstAmbient)) / Math.log(greater / smaller),
});
