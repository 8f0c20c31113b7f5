import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Output power over input power of one load point. */
export const efficiency = defineFormula({
  id: 'load/efficiency',
  tex: String.raw`\eta = \frac{P_o}{P_i}`,
  text: 'η = P_o / P_i',
  source: cite('eu-2019-1782', 'annex I, definition of active efficiency', 'secondary'),
  inputs: {
    output: { symbol: 'P_o', unit: 'W', means: 'output power', moves: 'up' },
    input: { symbol: 'P_i', unit: 'W', means: 'input power', moves: 'down' },
  },
  output: { symbol: 'η', unit: '1', means: 'efficiency', show: 'percent' },
  validity: 'none given',
  compute: ({ output, input }) => output / input,
});
