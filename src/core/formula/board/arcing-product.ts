import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What an opening joint can feed into an arc: peak of the open-circuit voltage times the rms current. A product by rule, no true power. */
export const arcingProduct = defineFormula({
  id: 'board/arcing-product',
  tex: String.raw`P = \hat V I`,
  text: 'P = V_p · I',
  source: cite('iec-62368-1', 'clause 6.2.3.1', 'secondary', { alsoBy: ['notes in two published test-report forms'] }),
  inputs: {
    peak: { symbol: 'V_p', unit: 'V', means: 'open-circuit voltage, peak', moves: 'up' },
    current: { symbol: 'I', unit: 'A', means: 'current in use, rms', moves: 'up' },
  },
  output: { symbol: 'P', unit: 'W', means: 'product' },
  validity: 'open-circuit voltages above 50 V peak or d.c.',
  compute: ({ peak, current }) => peak * current,
});
