import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Output while a chip draws a current from the reference pin, or feeds one in. */
export const shiftedSetPoint = defineFormula({
  id: 'feedback/shifted-set-point',
  tex: String.raw`V = V_o + I_s R_1`,
  text: 'V = V_o + I_s · R_1',
  source: cite('circuit-theory', 'a current into or out of the middle of a divider, the reference holding it', 'reasoned'),
  inputs: {
    output: { symbol: 'V_o', unit: 'V', means: 'output without that current', moves: 'up' },
    current: { symbol: 'I_s', unit: 'A', means: 'current drawn from the reference pin; negative when fed in', moves: 'up' },
    upper: { symbol: 'R_1', unit: 'Ω', means: 'resistor from the output to the reference pin' },
  },
  output: { symbol: 'V', unit: 'V', means: 'output that is set' },
  validity: 'independent of the lower resistor; the reference is in regulation',
  compute: ({ output, current, upper }) => output + current * upper,
});
