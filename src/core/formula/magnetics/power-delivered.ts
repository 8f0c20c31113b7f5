import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What of the power that the core passes arrives at the output. */
export const powerDelivered = defineFormula({
  id: 'magnetics/power-delivered',
  tex: String.raw`P_o = P \eta`,
  text: 'P_o = P · η',
  source: cite('circuit-theory', 'share that arrives', 'reasoned'),
  inputs: {
    power: { symbol: 'P', unit: 'W', means: 'power into the core', moves: 'up' },
    share: { symbol: 'η', unit: '1', means: 'share that arrives behind the rectifier', moves: 'up' },
  },
  output: { symbol: 'P_o', unit: 'W', means: 'power at the output' },
  validity: 'none given',
  compute: ({ power, share }) => power * share,
});
