import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const MU0_HENRY_PER_METRE = 4e-7 * Math.PI; // to nine digits, CODATA 2018

/** Inductance that an air gap gives. */
export const inductanceOfGap = defineFormula({
  id: 'magnetics/inductance-of-gap',
  tex: String.raw`L = \mu_0 N^2 A_e / l_g`,
  text: 'L = 4π · 1e−7 · N ² · A_e / l_g',
  source: cite('circuit-theory', 'reluctance of an air gap', 'secondary', {
    alsoBy: ['a core maker’s note on planar transformers, three designs'],
  }),
  inputs: {
    turns: { symbol: 'N', unit: '1', means: 'primary turns', moves: 'up' },
    area: { symbol: 'A_e', unit: 'm²', means: 'effective area of the core', moves: 'up' },
    gap: { symbol: 'l_g', unit: 'm', means: 'total air gap', moves: 'down' },
  },
  output: { symbol: 'L', unit: 'H', means: 'primary inductance' },
  validity: 'the core itself and the fringing of the gap left out',
  compute: ({ turns, area, gap }) => (MU0_HENRY_PER_METRE * turns * turns * area) / gap,
});
