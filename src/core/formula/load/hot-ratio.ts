import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What is left hot of what is held cold: near 1 for a set limit, well below it where heat lowers the limit or a part gives way. */
export const hotRatio = defineFormula({
  id: 'load/hot-ratio',
  tex: String.raw`h = \frac{I_{hot}}{I_{cold}}`,
  text: 'h = I_hot / I_cold',
  source: cite('circuit-theory', 'ratio', 'reasoned'),
  inputs: {
    hot: { symbol: 'I_hot', unit: 'A', means: 'current held hot', moves: 'up' },
    cold: { symbol: 'I_cold', unit: 'A', means: 'current held cold', moves: 'down' },
  },
  output: { symbol: 'h', unit: '1', means: 'current held hot over that cold' },
  validity: 'both sweeps at one mains, at one place, and both leave the window',
  compute: ({ hot, cold }) => hot / cold,
});
