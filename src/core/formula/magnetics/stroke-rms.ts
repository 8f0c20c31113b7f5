import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const TRIANGLE = 3; // mean square of a ramp from 0 to 1 is a third

/** Rms of a current that ramps from zero to its peak in a share of the period and is zero for the rest. */
export const strokeRms = defineFormula({
  id: 'magnetics/stroke-rms',
  tex: String.raw`I_{rms} = \hat I \sqrt{D/3}`,
  text: 'I_rms = I_pk · sqrt( D / 3 )',
  source: cite('circuit-theory', 'rms of a triangle', 'secondary', {
    alsoBy: ['a core maker’s note on planar transformers', 'a maker’s application note on transformer design'],
  }),
  inputs: {
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current', moves: 'up' },
    share: { symbol: 'D', unit: '1', means: 'share of the period', moves: 'up' },
  },
  output: { symbol: 'I_rms', unit: 'A', means: 'rms current' },
  validity: 'discontinuous mode',
  compute: ({ peak, share }) => peak * Math.sqrt(share / TRIANGLE),
});
