import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Peak current of a continuous converter. */
export const continuousPeak = defineFormula({
  id: 'magnetics/continuous-peak',
  tex: String.raw`\hat I = I / D + \Delta I / 2`,
  text: 'I_pk = I / D + dI / 2',
  source: cite('circuit-theory', 'mean of a trapezoid', 'secondary', { alsoBy: ['a maker’s data sheet of switched controllers'] }),
  inputs: {
    mean: { symbol: 'I', unit: 'A', means: 'mean current taken', moves: 'up' },
    share: { symbol: 'D', unit: '1', means: 'share of the period', moves: 'down' },
    rise: { symbol: 'dI', unit: 'A', means: 'rise of the current', moves: 'up' },
  },
  output: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary' },
  validity: 'continuous mode',
  compute: ({ mean, share, rise }) => mean / share + rise / 2,
});
