import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What is left at the lowest mains of what is held at the highest: near 1 for a set current limit, well below where the bulk capacitor runs dry. */
export const kneeRatio = defineFormula({
  id: 'load/knee-ratio',
  tex: String.raw`r = \frac{I_{low}}{I_{high}}`,
  text: 'r = I_low / I_high',
  source: cite('circuit-theory', 'ratio', 'reasoned'),
  inputs: {
    low: { symbol: 'I_low', unit: 'A', means: 'current held at the lowest mains', moves: 'up' },
    high: { symbol: 'I_high', unit: 'A', means: 'current held at the highest mains', moves: 'down' },
  },
  output: { symbol: 'r', unit: '1', means: 'current held at the lowest over that at the highest mains' },
  validity: 'both sweeps leave the window',
  compute: ({ low, high }) => low / high,
});
