import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What a switched rectifier would lose in the same place: triangles of current through its resistance. Its drive and its dead times are left out. */
export const switchedRectifierLoss = defineFormula({
  id: 'thermal/switched-rectifier-loss',
  tex: String.raw`P = \frac{4 I^2}{3 (1 - s)} R`,
  text: 'P = 4 · I · I / ( 3 · ( 1 − s )) · R',
  source: cite('heat-theory', 'r.m.s. of triangles that fill a share of the time, with the same mean', 'reasoned'),
  inputs: {
    current: { symbol: 'I', unit: 'A', means: 'mean current, that of the output', moves: 'up' },
    share: { symbol: 's', unit: '1', means: 'share of the time for which it blocks', from: 0, to: 0.95 },
    resistance: { symbol: 'R', unit: 'Ω', means: 'resistance while it conducts, hot', moves: 'up' },
  },
  output: { symbol: 'P', unit: 'W', means: 'loss' },
  validity: 'a flyback whose current falls to zero before the next stroke',
  compute: ({ current, share, resistance }) => ((4 * current * current) / (3 * (1 - share))) * resistance,
});
