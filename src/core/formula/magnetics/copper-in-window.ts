import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const CIRCLE = 4; // area of a circle by its diameter

/** Share of a window that copper fills. */
export const copperInWindow = defineFormula({
  id: 'magnetics/copper-in-window',
  tex: String.raw`k = \frac{N s \pi d^2}{4 A_w}`,
  text: 'k = N · s · π · d ² / ( 4 · A_w )',
  source: cite('circuit-theory', 'areas', 'reasoned'),
  inputs: {
    turns: { symbol: 'N', unit: '1', means: 'turns', moves: 'up' },
    strands: { symbol: 's', unit: '1', means: 'strands in parallel', moves: 'up' },
    diameter: { symbol: 'd', unit: 'm', means: 'bare diameter of a strand', moves: 'up' },
    window: { symbol: 'A_w', unit: 'm²', means: 'area of the window', moves: 'down' },
  },
  output: { symbol: 'k', unit: '1', means: 'share of the window', show: 'percent' },
  validity: 'one winding',
  compute: ({ turns, strands, diameter, window }) => (turns * strands * Math.PI * diameter * diameter) / (CIRCLE * window),
});
