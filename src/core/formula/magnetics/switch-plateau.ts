import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Voltage of the switch while the core gives its energy away. */
export const switchPlateau = defineFormula({
  id: 'magnetics/switch-plateau',
  tex: String.raw`V_s = V + V_r`,
  text: 'V_s = V + V_r',
  source: cite('circuit-theory', 'voltages in series', 'secondary', {
    alsoBy: ['a maker’s data sheet of switched controllers, equation 15'],
  }),
  inputs: {
    rail: { symbol: 'V', unit: 'V', means: 'voltage of the rail', moves: 'up' },
    reflected: { symbol: 'V_r', unit: 'V', means: 'reflected voltage', moves: 'up' },
  },
  output: { symbol: 'V_s', unit: 'V', means: 'voltage of the switch, without the spike of the leakage' },
  validity: 'after the spike',
  compute: ({ rail, reflected }) => rail + reflected,
});
