import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** One edge of a window around a nominal dimension; `sign` is -1 for the lower and 1 for the upper edge. */
export const windowAround = defineFormula({
  id: 'label/window-around',
  tex: String.raw`D = D_n \pm a`,
  text: 'D = D_n + s · a',
  source: cite('house', 'a nominal dimension and what it may be off', 'reasoned'),
  inputs: {
    nominal: { symbol: 'D_n', unit: 'm', means: 'nominal dimension', moves: 'up' },
    sign: { symbol: 's', unit: '1', means: '-1 for the lower edge, 1 for the upper' },
    allowance: { symbol: 'a', unit: 'm', means: 'what it may be off' },
  },
  output: { symbol: 'D', unit: 'm', means: 'edge of the window', show: 'millimetres' },
  validity: 'none given',
  compute: ({ nominal, sign, allowance }) => nominal + sign * allowance,
});
