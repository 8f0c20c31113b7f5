import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Peak current of a discontinuous converter that takes a power. */
export const peakOfPower = defineFormula({
  id: 'magnetics/peak-of-power',
  tex: String.raw`\hat I = \sqrt{2 P / (L f)}`,
  text: 'I_pk = sqrt( 2 · P / ( L · f ) )',
  source: cite('circuit-theory', 'energy of an inductor, one load of it each period', 'secondary', {
    alsoBy: ['a maker’s data sheet of switched controllers, equation 19'],
  }),
  inputs: {
    power: { symbol: 'P', unit: 'W', means: 'power taken', moves: 'up' },
    inductance: { symbol: 'L', unit: 'H', means: 'primary inductance', moves: 'down' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'frequency of the switch', moves: 'down' },
  },
  output: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary' },
  validity: 'fixed frequency, discontinuous mode',
  compute: ({ power, inductance, frequency }) => Math.sqrt((2 * power) / (inductance * frequency)),
});
