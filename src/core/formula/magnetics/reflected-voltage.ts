import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What the output puts across the primary while the core gives its energy away. */
export const reflectedVoltage = defineFormula({
  id: 'magnetics/reflected-voltage',
  tex: String.raw`V_r = n (V_o + V_f)`,
  text: 'V_r = n · ( V_o + V_f )',
  source: cite('circuit-theory', 'ideal transformer', 'secondary', { alsoBy: ['two makers’ data sheets of switched controllers'] }),
  inputs: {
    ratio: { symbol: 'n', unit: '1', means: 'turns ratio', moves: 'up' },
    output: { symbol: 'V_o', unit: 'V', means: 'output voltage', moves: 'up' },
    drop: { symbol: 'V_f', unit: 'V', means: 'drop of the rectifier', moves: 'up' },
  },
  output: { symbol: 'V_r', unit: 'V', means: 'reflected voltage' },
  validity: 'good coupling',
  compute: ({ ratio, output, drop }) => ratio * (output + drop),
});
