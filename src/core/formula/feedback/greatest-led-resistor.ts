import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Greatest resistor that still lets the optocoupler pull down what its transistor must. */
export const greatestLedResistor = defineFormula({
  id: 'feedback/greatest-led-resistor',
  tex: String.raw`R_F = \frac{(V_o - V_F - V_k)\,k}{I_c + k\,I_b}`,
  text: 'R_F = ( V_o - V_F - V_k ) · k / ( I_c + k · I_b )',
  source: cite('circuit-theory', 'Kirchhoff, LED current times least transfer ratio covers the collector current', 'reasoned'),
  inputs: {
    output: { symbol: 'V_o', unit: 'V', means: 'output', moves: 'up' },
    drop: { symbol: 'V_F', unit: 'V', means: 'drop of the LED', moves: 'down' },
    cathode: { symbol: 'V_k', unit: 'V', means: 'least voltage across the reference', moves: 'down' },
    ratio: { symbol: 'k', unit: '1', means: 'least current transfer ratio' },
    collector: { symbol: 'I_c', unit: 'A', means: 'current that the transistor must pull' },
    bias: { symbol: 'I_b', unit: 'A', means: 'current of the resistor across the LED' },
  },
  output: { symbol: 'R_F', unit: 'Ω', means: 'greatest resistor in series with the LED' },
  validity: 'the output is above LED and reference together',
  compute: ({ output, drop, cathode, ratio, collector, bias }) => ((output - drop - cathode) * ratio) / (collector + ratio * bias),
});
