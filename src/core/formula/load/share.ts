import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What was delivered as a share of what was promised. */
export const share = defineFormula({
  id: 'load/share',
  tex: String.raw`s = \frac{I_h}{I_c}`,
  text: 's = I_h / I_c',
  source: cite('circuit-theory', 'ratio', 'reasoned'),
  inputs: {
    held: { symbol: 'I_h', unit: 'A', means: 'current held inside the window', moves: 'up' },
    claimed: { symbol: 'I_c', unit: 'A', means: 'current claimed', moves: 'down' },
  },
  output: { symbol: 's', unit: '1', means: 'share of the claim', show: 'percent' },
  validity: 'none given',
  compute: ({ held, claimed }) => held / claimed,
});
