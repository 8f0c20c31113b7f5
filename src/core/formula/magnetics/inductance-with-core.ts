import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const MU0_HENRY_PER_METRE = 4e-7 * Math.PI; // to nine digits, CODATA 2018

/** Inductance that an air gap and the ferrite around it give together. */
export const inductanceWithCore = defineFormula({
  id: 'magnetics/inductance-with-core',
  tex: String.raw`L = \frac{N^2}{l_g / (\mu_0 A_e) + 1 / A_L}`,
  text: 'L = N ² / ( l_g / ( 4π · 1e−7 · A_e ) + 1 / A_L )',
  source: cite('circuit-theory', 'reluctances of core and gap in a row', 'secondary', {
    alsoBy: ['a maker’s note on designing flyback supplies, 1999'],
  }),
  inputs: {
    turns: { symbol: 'N', unit: '1', means: 'primary turns', moves: 'up' },
    area: { symbol: 'A_e', unit: 'm²', means: 'effective area of the core', moves: 'up' },
    gap: { symbol: 'l_g', unit: 'm', means: 'total air gap', from: 0, moves: 'down' },
    ungapped: { symbol: 'A_L', unit: 'H', means: 'inductance of one turn on the core without a gap', moves: 'up' },
  },
  output: { symbol: 'L', unit: 'H', means: 'primary inductance' },
  validity: 'a gap much shorter than the leg is wide: the fringing of its field left out',
  compute: ({ turns, area, gap, ungapped }) => (turns * turns) / (gap / (MU0_HENRY_PER_METRE * area) + 1 / ungapped),
});
