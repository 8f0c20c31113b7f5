import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Most current that the resistor of an optocoupler lets through its LED. */
export const ledCurrent = defineFormula({
  id: 'feedback/led-current',
  tex: String.raw`I_F = (V_o - V_F - V_k) / R_F`,
  text: 'I_F = ( V_o - V_F - V_k ) / R_F',
  source: cite('circuit-theory', 'Kirchhoff, LED and reference in series with a resistor', 'reasoned'),
  inputs: {
    output: { symbol: 'V_o', unit: 'V', means: 'output', moves: 'up' },
    drop: { symbol: 'V_F', unit: 'V', means: 'drop of the LED', moves: 'down' },
    cathode: { symbol: 'V_k', unit: 'V', means: 'least voltage across the reference', moves: 'down' },
    resistance: { symbol: 'R_F', unit: 'Ω', means: 'resistor in series with the LED' },
  },
  output: { symbol: 'I_F', unit: 'A', means: 'current through the LED at most' },
  validity: 'the output is above LED and reference together',
  compute: ({ output, drop, cathode, resistance }) => (output - drop - cathode) / resistance,
});
