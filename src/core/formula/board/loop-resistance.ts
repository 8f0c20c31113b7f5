import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What limits the inrush: the part made for it and the mains. */
export const loopResistance = defineFormula({
  id: 'board/loop-resistance',
  tex: 'R = R_s + R_l',
  text: 'R = R_s + R_l',
  source: cite('circuit-theory', 'resistances in series', 'reasoned'),
  inputs: {
    limiter: { symbol: 'R_s', unit: 'Ω', means: 'resistance of the part that limits the inrush', moves: 'up' },
    line: { symbol: 'R_l', unit: 'Ω', means: 'resistance of the mains', moves: 'up' },
  },
  output: { symbol: 'R', unit: 'Ω', means: 'resistance of the loop' },
  validity: 'none given',
  compute: ({ limiter, line }) => limiter + line,
});
