import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Share of a period that a current takes to rise to its peak, or to fall from it, under a voltage. */
export const strokeShare = defineFormula({
  id: 'magnetics/stroke-share',
  tex: String.raw`D = L \hat I f / V`,
  text: 'D = L · I_pk · f / V',
  source: cite('circuit-theory', 'voltage across an inductor', 'secondary', {
    alsoBy: ['a maker’s data sheet of switched controllers, equation 24'],
  }),
  inputs: {
    inductance: { symbol: 'L', unit: 'H', means: 'primary inductance', moves: 'up' },
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'up' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'frequency of the switch', moves: 'up' },
    voltage: { symbol: 'V', unit: 'V', means: 'voltage across the primary', moves: 'down' },
  },
  output: { symbol: 'D', unit: '1', means: 'share of the period' },
  validity: 'a straight ramp from zero',
  compute: ({ inductance, peak, frequency, voltage }) => (inductance * peak * frequency) / voltage,
});
