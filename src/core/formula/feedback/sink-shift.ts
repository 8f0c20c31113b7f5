import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** How far a current out of the reference pin moves the output. */
export const sinkShift = defineFormula({
  id: 'feedback/sink-shift',
  tex: String.raw`\Delta V = I_s R_1`,
  text: 'ΔV = I_s · R_1',
  source: cite('circuit-theory', 'a current into or out of the middle of a divider, the reference holding it', 'reasoned'),
  inputs: {
    current: { symbol: 'I_s', unit: 'A', means: 'current drawn from the reference pin; negative when fed in', moves: 'up' },
    upper: { symbol: 'R_1', unit: 'Ω', means: 'resistor from the output to the reference pin' },
  },
  output: { symbol: 'ΔV', unit: 'V', means: 'change of the output' },
  validity: 'independent of the lower resistor',
  compute: ({ current, upper }) => current * upper,
});
