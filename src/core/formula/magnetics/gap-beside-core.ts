import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const MU0_HENRY_PER_METRE = 4e-7 * Math.PI; // to nine digits, CODATA 2018

/** Air gap that an inductance asks for beside the reluctance of the ferrite. Zero or less: the ferrite alone gives no more than this inductance. */
export const gapBesideCore = defineFormula({
  id: 'magnetics/gap-beside-core',
  tex: String.raw`l_g = \mu_0 A_e \left( \frac{N^2}{L} - \frac{1}{A_L} \right)`,
  text: 'l_g = 4π · 1e−7 · A_e · ( N ² / L − 1 / A_L )',
  source: cite('circuit-theory', 'reluctances of core and gap in a row', 'secondary', {
    alsoBy: ['a maker’s note on designing flyback supplies, 1999'],
  }),
  inputs: {
    turns: { symbol: 'N', unit: '1', means: 'primary turns', moves: 'up' },
    area: { symbol: 'A_e', unit: 'm²', means: 'effective area of the core' },
    inductance: { symbol: 'L', unit: 'H', means: 'primary inductance', moves: 'down' },
    ungapped: { symbol: 'A_L', unit: 'H', means: 'inductance of one turn on the core without a gap', moves: 'up' },
  },
  output: { symbol: 'l_g', unit: 'm', means: 'total air gap', show: 'millimetres' },
  validity: 'a gap much shorter than the leg is wide: the fringing of its field left out',
  compute: ({ turns, area, inductance, ungapped }) => MU0_HENRY_PER_METRE * area * ((turns * turns) / inductance - 1 / ungapped),
});
