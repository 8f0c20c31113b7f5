import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** How long a share of a period lasts. */
export const strokeTime = defineFormula({
  id: 'magnetics/stroke-time',
  tex: String.raw`t = D / f`,
  text: 't = D / f',
  source: cite('circuit-theory', 'period and frequency', 'secondary', {
    alsoBy: ['a maker’s note on controllers of quasi-resonant supplies'],
  }),
  inputs: {
    share: { symbol: 'D', unit: '1', means: 'share of the period', from: 0, to: 1, moves: 'up' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'frequency of the switch', moves: 'down' },
  },
  output: { symbol: 't', unit: 's', means: 'time' },
  validity: 'none given',
  compute: ({ share, frequency }) => share / frequency,
});
