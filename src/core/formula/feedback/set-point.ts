import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Output that a shunt reference sets through its divider. */
export const setPoint = defineFormula({
  id: 'feedback/set-point',
  tex: String.raw`V_o = V_r (1 + R_1 / R_2) + I_r R_1`,
  text: 'V_o = V_r · ( 1 + R_1 / R_2 ) + I_r · R_1',
  source: cite(
    'reference-sheets',
    'output by divider: the current into the reference pin adds to the drop of the upper resistor',
    'secondary',
    { disagrees: ['two pages of one maker print the current with a minus sign'] },
  ),
  inputs: {
    reference: { symbol: 'V_r', unit: 'V', means: 'reference voltage', moves: 'up' },
    upper: { symbol: 'R_1', unit: 'Ω', means: 'resistor from the output to the reference pin', moves: 'up' },
    lower: { symbol: 'R_2', unit: 'Ω', means: 'resistor from the reference pin to the return', moves: 'down' },
    current: { symbol: 'I_r', unit: 'A', means: 'current into the reference pin', moves: 'up' },
  },
  output: { symbol: 'V_o', unit: 'V', means: 'output that is set' },
  validity: 'the reference is in regulation: enough cathode current and voltage',
  compute: ({ reference, upper, lower, current }) => reference * (1 + upper / lower) + current * upper,
});
