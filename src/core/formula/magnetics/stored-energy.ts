import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Energy in the core at the peak of the current. */
export const storedEnergy = defineFormula({
  id: 'magnetics/stored-energy',
  tex: String.raw`E = L \hat I^2 / 2`,
  text: 'E = L · I_pk ² / 2',
  source: cite('circuit-theory', 'energy of an inductor', 'reasoned'),
  inputs: {
    inductance: { symbol: 'L', unit: 'H', means: 'primary inductance', moves: 'up' },
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'up' },
  },
  output: { symbol: 'E', unit: 'J', means: 'energy of one stroke' },
  validity: 'below saturation',
  compute: ({ inductance, peak }) => (inductance * peak * peak) / 2,
});
