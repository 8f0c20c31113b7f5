import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const MU0_HENRY_PER_METRE = 4e-7 * Math.PI; // to nine digits, CODATA 2018

/** Air gap that an inductance asks for. */
export const gapOfInductance = defineFormula({
  id: 'magnetics/gap-of-inductance',
  tex: String.raw`l_g = \mu_0 N^2 A_e / L`,
  text: 'l_g = 4π · 1e−7 · N ² · A_e / L',
  source: cite('circuit-theory', 'reluctance of an air gap', 'secondary', {
    alsoBy: ['a core maker’s note on planar transformers, three designs'],
  }),
  inputs: {
    turns: { symbol: 'N', unit: '1', means: 'primary turns', moves: 'up' },
    area: { symbol: 'A_e', unit: 'm²', means: 'effective area of the core', moves: 'up' },
    inductance: { symbol: 'L', unit: 'H', means: 'primary inductance', moves: 'down' },
  },
  output: { symbol: 'l_g', unit: 'm', means: 'total air gap', show: 'millimetres' },
  validity: 'the core itself and the fringing of the gap left out',
  compute: ({ turns, area, inductance }) => (MU0_HENRY_PER_METRE * turns * turns * area) / inductance,
});
