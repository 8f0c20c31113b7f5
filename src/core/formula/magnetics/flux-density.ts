import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Flux density at the peak of the current. */
export const fluxDensity = defineFormula({
  id: 'magnetics/flux-density',
  tex: String.raw`B = \frac{L \hat I}{N A_e}`,
  text: 'B = L · I_pk / ( N · A_e )',
  source: cite('circuit-theory', 'flux linkage', 'reasoned'),
  inputs: {
    inductance: { symbol: 'L', unit: 'H', means: 'primary inductance', moves: 'up' },
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'up' },
    turns: { symbol: 'N', unit: '1', means: 'primary turns', moves: 'down' },
    area: { symbol: 'A_e', unit: 'm²', means: 'effective area of the core', moves: 'down' },
  },
  output: { symbol: 'B', unit: 'T', means: 'flux density at the peak' },
  validity: 'below saturation',
  compute: ({ inductance, peak, turns, area }) => (inductance * peak) / (turns * area),
});
