import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What stays inside as heat: input power less output power. */
export const loss = defineFormula({
  id: 'load/loss',
  tex: String.raw`P_l = P_i - P_o`,
  text: 'P_l = P_i − P_o',
  source: cite('circuit-theory', 'conservation of energy', 'reasoned'),
  inputs: {
    input: { symbol: 'P_i', unit: 'W', means: 'input power', moves: 'up' },
    output: { symbol: 'P_o', unit: 'W', means: 'output power', moves: 'down' },
  },
  output: { symbol: 'P_l', unit: 'W', means: 'loss' },
  validity: 'both at the same moment; a captive lead counts to the side at which the output is read',
  compute: ({ input, output }) => input - output,
});
