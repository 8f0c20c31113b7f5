import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Current into a shorted output while the switch goes on to its limit every period: the core hardly empties, and the secondary carries it all the time. */
export const shortedOutputCurrent = defineFormula({
  id: 'magnetics/shorted-output-current',
  tex: String.raw`I_o = k\, n \hat I`,
  text: 'I_o = k · n · I_pk',
  source: cite('circuit-theory', 'continuous current of a secondary', 'secondary', {
    alsoBy: ['a maker’s note on designing flyback supplies, 1999'],
  }),
  inputs: {
    arriving: {
      symbol: 'k',
      unit: '1',
      means: 'what of the peak arrives: 0.9 through a Schottky rectifier, 0.8 through a plain one',
      moves: 'up',
    },
    ratio: { symbol: 'n', unit: '1', means: 'turns ratio', moves: 'up' },
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'up' },
  },
  output: { symbol: 'I_o', unit: 'A', means: 'output current into a short' },
  validity: 'a fixed frequency that is kept, without pauses, retries or folding back',
  compute: ({ arriving, ratio, peak }) => arriving * ratio * peak,
});
