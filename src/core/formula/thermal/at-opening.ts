import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/**
 * Temperature of a part at the moment of opening, carried back from two readings after it along one exponential. A part that cools with several
 * time constants falls faster at first (the logarithm of a sum of decaying exponentials is convex), so that it was at least as hot as this.
 */
export const atOpening = defineFormula({
  id: 'thermal/at-opening',
  tex: String.raw`T_0 = T_a + (T_1 - T_a)\left(\frac{T_1 - T_a}{T_2 - T_a}\right)^{t_1/(t_2 - t_1)}`,
  text: 'T_0 = T_a + ( T_1 − T_a ) · (( T_1 − T_a )/( T_2 − T_a ))^( t_1 /( t_2 − t_1 ))',
  source: cite('heat-theory', 'Newton’s law of cooling, carried back from two readings', 'reasoned'),
  inputs: {
    first: { symbol: 'T_1', unit: 'K', means: 'first reading after opening', moves: 'up' },
    second: { symbol: 'T_2', unit: 'K', means: 'second reading after opening', moves: 'down' },
    ambient: { symbol: 'T_a', unit: 'K', means: 'ambient' },
    firstAfter: { symbol: 't_1', unit: 's', means: 'from opening to the first reading', moves: 'up' },
    secondAfter: { symbol: 't_2', unit: 's', means: 'from opening to the second reading', moves: 'down' },
  },
  output: { symbol: 'T_0', unit: 'K', means: 'temperature at the moment of opening, at least' },
  validity: 'one part, read twice while it cools, both times above ambient, the load as it was or taken off at the opening',
  compute: ({ first, second, ambient, firstAfter, secondAfter }) => {
    const [above, later] = [first - ambient, second - ambient];
    return ambient + above * Math.exp((firstAfter / (secondAfter - firstAfter)) * Math.log(above / later));
  },
});
