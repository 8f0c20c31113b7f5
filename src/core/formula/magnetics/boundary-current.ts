import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Peak current at which the core is just empty when the next stroke begins. */
export const boundaryCurrent = defineFormula({
  id: 'magnetics/boundary-current',
  tex: String.raw`I_b = \frac{V V_r}{(V + V_r) L f}`,
  text: 'I_b = V · V_r / ( ( V + V_r ) · L · f )',
  source: cite('circuit-theory', 'volt-seconds of an inductor in balance', 'reasoned'),
  inputs: {
    rail: { symbol: 'V', unit: 'V', means: 'voltage of the rail', moves: 'up' },
    reflected: { symbol: 'V_r', unit: 'V', means: 'reflected voltage', moves: 'up' },
    inductance: { symbol: 'L', unit: 'H', means: 'primary inductance', moves: 'down' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'frequency of the switch', moves: 'down' },
  },
  output: { symbol: 'I_b', unit: 'A', means: 'peak current at the edge of the discontinuous mode' },
  validity: 'fixed frequency',
  compute: ({ rail, reflected, inductance, frequency }) => (rail * reflected) / ((rail + reflected) * inductance * frequency),
});
