import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** How much a lone round wire resists more at a frequency: its current flows in a ring as deep as the skin. */
export const ringFactor = defineFormula({
  id: 'magnetics/ring-factor',
  tex: String.raw`F = \frac{d^2}{d^2 - (d - 2\delta)^2}`,
  text: 'F = d ² / ( d ² − ( d − 2 · δ )² )',
  source: cite('wire-handbook', 'table 4-13', 'secondary'),
  inputs: {
    diameter: { symbol: 'd', unit: 'm', means: 'bare diameter of a strand', moves: 'up' },
    depth: { symbol: 'δ', unit: 'm', means: 'skin depth', moves: 'down' },
  },
  output: { symbol: 'F', unit: '1', means: 'resistance over that to direct current' },
  validity: 'a wire far from others; 1 for a wire thinner than two skin depths',
  compute: ({ diameter, depth }) => {
    const core = Math.max(0, diameter - 2 * depth);
    return (diameter * diameter) / (diameter * diameter - core * core);
  },
});
