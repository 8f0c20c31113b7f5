import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Way over the surface from one winding round the edge of the tape to the next. */
export const wayRoundEdge = defineFormula({
  id: 'insulation/way-round-edge',
  tex: String.raw`d = \max(0, m_1 - s) + t + \max(0, m_2 - s)`,
  text: 'd = max( 0 , m_1 − s ) + t + max( 0 , m_2 − s )',
  source: cite('circuit-theory', 'geometry; creepage is twice the margin where the tape reaches the wall', 'secondary', {
    alsoBy: ['a magnetics maker’s notes on margins'],
  }),
  inputs: {
    inner: { symbol: 'm_1', unit: 'm', means: 'margin of one winding', moves: 'up' },
    outer: { symbol: 'm_2', unit: 'm', means: 'margin of the other', moves: 'up' },
    short: { symbol: 's', unit: 'm', means: 'how far the tape stops before the wall', moves: 'down' },
    thickness: { symbol: 't', unit: 'm', means: 'thickness of all tape between', moves: 'up' },
  },
  output: { symbol: 'd', unit: 'm', means: 'way round the edge', show: 'millimetres' },
  validity: 'a tape that is not folded up the wall',
  compute: ({ inner, outer, short, thickness }) => Math.max(0, inner - short) + thickness + Math.max(0, outer - short),
});
