import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';
import { roundUp } from '../round-up.ts';

/** Turns are wound whole: the next whole number. */
export const wholeTurns = defineFormula({
  id: 'magnetics/whole-turns',
  tex: String.raw`N' = \lceil N \rceil`,
  text: "N' = N rounded up",
  source: cite('circuit-theory', 'a turn passes through the window or does not', 'secondary', {
    alsoBy: ['a core maker’s note on planar transformers, two designs of three; the third rounds 23.07 down'],
  }),
  inputs: { turns: { symbol: 'N', unit: '1', means: 'turns worked out', moves: 'up' } },
  output: { symbol: "N'", unit: '1', means: 'whole turns' },
  validity: 'none given',
  compute: ({ turns }) => roundUp(turns, 1),
  sensitivity: () => ({ turns: 1 }),
  branch: ({ turns }) => `${roundUp(turns, 1)}`,
});
