import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What turning the plug does to the touch current. Read with one meter on one day, its gain comes off. */
export const plugWayDifference = defineFormula({
  id: 'touch/plug-way-difference',
  tex: 'D = I_A - I_B',
  text: 'D = I_A - I_B',
  source: cite('circuit-theory', 'a difference', 'reasoned'),
  inputs: {
    one: { symbol: 'I_A', unit: 'A', means: 'touch current, plug way A', moves: 'up' },
    other: { symbol: 'I_B', unit: 'A', means: 'touch current, plug way B', moves: 'down' },
  },
  output: { symbol: 'D', unit: 'A', means: 'difference by plug way', show: 'milliamperes' },
  validity: 'both at the same mains, or scaled to it',
  compute: ({ one, other }) => one - other,
});
