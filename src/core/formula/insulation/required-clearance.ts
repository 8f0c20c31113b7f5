import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Required clearance: the larger of both procedures, times the factor for altitude. */
export const requiredClearance = defineFormula({
  id: 'insulation/required-clearance',
  tex: String.raw`d = k_a \max(d_1, d_2)`,
  text: 'd = k_a · max( d_1 ; d_2 )',
  source: cite('iec-62368-1', 'clause 5.4.2.1', 'secondary', {
    alsoBy: ['an open magnetics library, insulation logic', 'a published test report: 420 V peak at 240 V mains, reinforced 3.0 mm'],
  }),
  inputs: {
    byPeak: { symbol: 'd_1', unit: 'm', means: 'clearance by procedure 1 (peak voltage)', moves: 'up' },
    byTransient: { symbol: 'd_2', unit: 'm', means: 'clearance by procedure 2 (transients)', moves: 'up' },
    altitude: { symbol: 'k_a', unit: '1', means: 'factor for altitude', moves: 'up', from: 1 },
  },
  output: { symbol: 'd', unit: 'm', means: 'required clearance', show: 'millimetres' },
  validity: 'none given',
  compute: ({ byPeak, byTransient, altitude }) => altitude * Math.max(byPeak, byTransient),
  branch: ({ byPeak, byTransient }) => (byPeak > byTransient ? 'procedure 1' : 'procedure 2'),
});
