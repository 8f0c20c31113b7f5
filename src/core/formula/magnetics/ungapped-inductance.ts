import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const MU0_HENRY_PER_METRE = 4e-7 * Math.PI; // to nine digits, CODATA 2018

/** Inductance of one turn on a closed core, from its size and how well it carries flux. */
export const ungappedInductance = defineFormula({
  id: 'magnetics/ungapped-inductance',
  tex: String.raw`A_L = \mu_0 \mu_e \frac{A_e}{l_e}`,
  text: 'A_L = 4π · 1e−7 · μ_e · A_e / l_e',
  source: cite('circuit-theory', 'reluctance of a core', 'reasoned'),
  inputs: {
    permeability: { symbol: 'μ_e', unit: '1', means: 'permeability of the closed core, its joints included', moves: 'up' },
    area: { symbol: 'A_e', unit: 'm²', means: 'effective area of the core', moves: 'up' },
    length: { symbol: 'l_e', unit: 'm', means: 'effective length of its path', moves: 'down' },
  },
  output: { symbol: 'A_L', unit: 'H', means: 'inductance of one turn on the core without a gap' },
  validity: 'far from saturation',
  compute: ({ permeability, area, length }) => (MU0_HENRY_PER_METRE * permeability * area) / length,
});
