import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Ripple current of the capacitor behind a rectifier. */
export const capacitorRms = defineFormula({
  id: 'magnetics/capacitor-rms',
  tex: String.raw`I_C = \sqrt{I_{rms}^2 - I_o^2}`,
  text: 'I_C = sqrt( I_rms ² − I_o ² )',
  source: cite('circuit-theory', 'mean squares add', 'secondary', {
    alsoBy: ['a maker’s application note on transformer design, page 22'],
  }),
  inputs: {
    rms: { symbol: 'I_rms', unit: 'A', means: 'rms current of the rectifier', moves: 'up' },
    mean: { symbol: 'I_o', unit: 'A', means: 'mean current', moves: 'down' },
  },
  output: { symbol: 'I_C', unit: 'A', means: 'rms current of the capacitor' },
  validity: 'one output',
  compute: ({ rms, mean }) => Math.sqrt(Math.max(0, rms * rms - mean * mean)),
});
