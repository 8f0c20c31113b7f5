import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Share of their printed currents that outputs are loaded with together, where the sum of all is more than the unit is printed to give. */
export const derating = defineFormula({
  id: 'load/derating',
  tex: String.raw`D = \min\!\left(1, \frac{P}{\sum V_i I_i}\right)`,
  text: 'D = min( 1 ; P / S ) with S the sum of V · I',
  source: cite('us-10cfr430', 'subpart B, appendix Z: supplies with several outputs', 'secondary', {
    alsoBy: ['a copy of the federal regulations'],
  }),
  inputs: {
    printed: { symbol: 'P', unit: 'W', means: 'printed for the whole unit', moves: 'up' },
    sum: { symbol: 'S', unit: 'W', means: 'sum over the outputs of printed voltage times current', moves: 'down' },
  },
  output: { symbol: 'D', unit: '1', means: 'share', show: 'percent' },
  validity: 'none given',
  compute: ({ printed, sum }) => Math.min(1, printed / sum),
  branch: ({ printed, sum }) => (printed < sum ? 'derated' : 'as printed'),
});
