import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Of two distances that are asked for the same gap, the greater. */
export const greaterDistance = defineFormula({
  id: 'insulation/greater-distance',
  tex: String.raw`d = \max(d_a, d_b)`,
  text: 'd = max( d_a ; d_b )',
  source: cite('iec-62368-1', 'clause 5.4.2.2: above 30 kHz table 11 is added; that table 10 stays is our own reading', 'reasoned'),
  inputs: {
    low: { symbol: 'd_a', unit: 'm', means: 'distance at mains frequency', moves: 'up' },
    high: { symbol: 'd_b', unit: 'm', means: 'distance above 30 kHz', moves: 'up' },
  },
  output: { symbol: 'd', unit: 'm', means: 'distance', show: 'millimetres' },
  validity: 'none given',
  compute: ({ low, high }) => Math.max(low, high),
  branch: ({ low, high }) => (high > low ? 'above 30 kHz' : 'mains frequency'),
});
