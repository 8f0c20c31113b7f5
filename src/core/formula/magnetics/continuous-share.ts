import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** On-time of a continuous converter as a share of the period. */
export const continuousShare = defineFormula({
  id: 'magnetics/continuous-share',
  tex: String.raw`D = V_r / (V + V_r)`,
  text: 'D = V_r / ( V + V_r )',
  source: cite('circuit-theory', 'volt-seconds of an inductor in balance', 'secondary', { alsoBy: ['two makers’ application notes'] }),
  inputs: {
    reflected: { symbol: 'V_r', unit: 'V', means: 'reflected voltage', moves: 'up' },
    rail: { symbol: 'V', unit: 'V', means: 'voltage of the rail', moves: 'down' },
  },
  output: { symbol: 'D', unit: '1', means: 'share of the period' },
  validity: 'continuous mode; drop of the switch left out',
  compute: ({ reflected, rail }) => reflected / (rail + reflected),
});
