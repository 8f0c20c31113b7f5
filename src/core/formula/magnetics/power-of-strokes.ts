import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Power that a discontinuous converter of fixed frequency takes at its current limit. */
export const powerOfStrokes = defineFormula({
  id: 'magnetics/power-of-strokes',
  tex: String.raw`P = L \hat I^2 f / 2`,
  text: 'P = L · I_pk ² · f / 2',
  source: cite('circuit-theory', 'energy of an inductor, one load of it each period', 'secondary', {
    alsoBy: ['a maker’s data sheet of switched controllers, equations 22 and 23'],
  }),
  inputs: {
    inductance: { symbol: 'L', unit: 'H', means: 'primary inductance', moves: 'up' },
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'up' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'frequency of the switch', moves: 'up' },
  },
  output: { symbol: 'P', unit: 'W', means: 'power into the core' },
  validity: 'fixed frequency, discontinuous mode',
  compute: ({ inductance, peak, frequency }) => (inductance * peak * peak * frequency) / 2,
});
