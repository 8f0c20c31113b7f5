import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Frequency of a converter that begins a stroke as soon as the core is empty. */
export const boundaryFrequency = defineFormula({
  id: 'magnetics/boundary-frequency',
  tex: String.raw`f = \frac{1}{L \hat I (1/V + 1/V_r) + t}`,
  text: 'f = 1 / ( L · I_pk · ( 1 / V + 1 / V_r ) + t )',
  source: cite('circuit-theory', 'volt-seconds of an inductor, stroke after stroke', 'reasoned'),
  inputs: {
    inductance: { symbol: 'L', unit: 'H', means: 'primary inductance', moves: 'down' },
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'down' },
    rail: { symbol: 'V', unit: 'V', means: 'voltage of the rail', moves: 'up' },
    reflected: { symbol: 'V_r', unit: 'V', means: 'reflected voltage', moves: 'up' },
    wait: { symbol: 't', unit: 's', means: 'wait for the valley of the ring', moves: 'down' },
  },
  output: { symbol: 'f', unit: 'Hz', means: 'frequency of the switch' },
  validity: 'self-oscillating and valley-switched converters',
  compute: ({ inductance, peak, rail, reflected, wait }) => 1 / (inductance * peak * (1 / rail + 1 / reflected) + wait),
});
