import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Output that a Zener diode sets in series with the LED of an optocoupler. */
export const zenerSetPoint = defineFormula({
  id: 'feedback/zener-set-point',
  tex: String.raw`V_o = V_z + V_F + I\,R_F`,
  text: 'V_o = V_z + V_F + I · R_F',
  source: cite('circuit-theory', 'Kirchhoff, Zener, LED and resistor in a row', 'reasoned'),
  inputs: {
    zener: { symbol: 'V_z', unit: 'V', means: 'Zener voltage', moves: 'up' },
    drop: { symbol: 'V_F', unit: 'V', means: 'drop of the LED', moves: 'up' },
    current: { symbol: 'I', unit: 'A', means: 'current through them', moves: 'up' },
    resistance: { symbol: 'R_F', unit: 'Ω', means: 'resistor in the row', moves: 'up' },
  },
  output: { symbol: 'V_o', unit: 'V', means: 'output that is set' },
  validity: 'the Zener is at its test current; below it, it gives less',
  compute: ({ zener, drop, current, resistance }) => zener + drop + current * resistance,
});
