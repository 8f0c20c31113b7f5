import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Least resistor with which neither the LED of an optocoupler nor the reference below it carries more than it may, however hard the loop pulls. */
export const leastLedResistor = defineFormula({
  id: 'feedback/least-led-resistor',
  tex: String.raw`R_F = (V_o - V_F - V_k) / I_m`,
  text: 'R_F = ( V_o - V_F - V_k ) / I_m',
  source: cite('circuit-theory', 'Kirchhoff, LED and reference in series with a resistor', 'reasoned'),
  inputs: {
    output: { symbol: 'V_o', unit: 'V', means: 'output', moves: 'up' },
    drop: { symbol: 'V_F', unit: 'V', means: 'drop of the LED', moves: 'down' },
    cathode: { symbol: 'V_k', unit: 'V', means: 'least voltage across the reference', moves: 'down' },
    most: { symbol: 'I_m', unit: 'A', means: 'most current that LED and reference both stand' },
  },
  output: { symbol: 'R_F', unit: 'Ω', means: 'least resistor in series with the LED' },
  validity: 'the output is above LED and reference together',
  compute: ({ output, drop, cathode, most }) => (output - drop - cathode) / most,
});
