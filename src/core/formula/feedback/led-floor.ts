import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Output at which the loop rests when the divider asks for less than the LED allows. */
export const ledFloor = defineFormula({
  id: 'feedback/led-floor',
  tex: String.raw`V_o = V_F + V_k`,
  text: 'V_o = V_F + V_k',
  source: cite('circuit-theory', 'Kirchhoff, LED and reference in a row, resistor without current', 'reasoned'),
  inputs: {
    drop: { symbol: 'V_F', unit: 'V', means: 'drop of the LED', moves: 'up' },
    cathode: { symbol: 'V_k', unit: 'V', means: 'least voltage across the reference', moves: 'up' },
  },
  output: { symbol: 'V_o', unit: 'V', means: 'lowest output that the loop can hold' },
  validity: 'little current through the LED; each milliampere adds its drop on the resistor',
  compute: ({ drop, cathode }) => drop + cathode,
});
