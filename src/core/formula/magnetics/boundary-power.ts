import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Power that a converter takes which begins a stroke as soon as the core is empty; the inductance drops out. */
export const boundaryPower = defineFormula({
  id: 'magnetics/boundary-power',
  tex: String.raw`P = \frac{\hat I V V_r}{2 (V + V_r)}`,
  text: 'P = I_pk · V · V_r / ( 2 · ( V + V_r ) )',
  source: cite('circuit-theory', 'mean of a triangle times the rail', 'reasoned'),
  inputs: {
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'up' },
    rail: { symbol: 'V', unit: 'V', means: 'voltage of the rail', moves: 'up' },
    reflected: { symbol: 'V_r', unit: 'V', means: 'reflected voltage', moves: 'up' },
  },
  output: { symbol: 'P', unit: 'W', means: 'power into the core' },
  validity: 'self-oscillating and valley-switched converters; the wait for the valley left out, which lowers it',
  compute: ({ peak, rail, reflected }) => (peak * rail * reflected) / (2 * (rail + reflected)),
});
