import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Peak of a sinusoidal test voltage, to compare it with one that is stated as a peak or as direct voltage. */
export const crestOfTest = defineFormula({
  id: 'insulation/crest-of-test',
  tex: String.raw`\hat U = \sqrt{2}\, U`,
  text: 'U_p = √2 · U',
  source: cite('circuit-theory', 'sinusoidal quantities', 'reasoned'),
  inputs: { rms: { symbol: 'U', unit: 'V', means: 'test voltage, rms', moves: 'up' } },
  output: { symbol: 'U_p', unit: 'V', means: 'its peak' },
  validity: 'sinusoidal voltages',
  compute: ({ rms }) => Math.SQRT2 * rms,
});
