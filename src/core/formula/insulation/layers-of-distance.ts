import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** How many layers of insulation a distance stands for: one at basic, two at reinforced, on a straight line between and below. */
export const layersOfDistance = defineFormula({
  id: 'insulation/layers-of-distance',
  tex: String.raw`q = d/d_b,\ 1 + (d - d_b)/(d_r - d_b)\ \text{or}\ 2d/d_r`,
  text: 'q = d / d_b up to d_b , then 1 + ( d − d_b ) / ( d_r − d_b ) up to d_r , then 2 · d / d_r',
  source: cite('house', 'a scale on which the pieces of a way over floating conductors add as their distances do', 'reasoned'),
  inputs: {
    distance: { symbol: 'd', unit: 'm', means: 'distance', moves: 'up' },
    basic: { symbol: 'd_b', unit: 'm', means: 'distance asked for basic insulation', moves: 'down' },
    reinforced: { symbol: 'd_r', unit: 'm', means: 'distance asked for reinforced insulation', moves: 'down' },
  },
  output: { symbol: 'q', unit: '1', means: 'layers of insulation' },
  validity: 'distances of one kind; a reinforced distance is longer than a basic one',
  compute: ({ distance, basic, reinforced }) => {
    if (distance <= basic) return distance / basic;
    return distance <= reinforced ? 1 + (distance - basic) / (reinforced - basic) : (2 * distance) / reinforced;
  },
});
