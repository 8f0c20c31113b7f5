import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Peak current of the secondary. */
export const secondaryPeak = defineFormula({
  id: 'magnetics/secondary-peak',
  tex: String.raw`\hat I_s = n \hat I`,
  text: 'I_s = n · I_pk',
  source: cite('circuit-theory', 'ideal transformer', 'reasoned'),
  inputs: {
    ratio: { symbol: 'n', unit: '1', means: 'turns ratio', moves: 'up' },
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'up' },
  },
  output: { symbol: 'I_s', unit: 'A', means: 'peak current of the secondary' },
  validity: 'one output',
  compute: ({ ratio, peak }) => ratio * peak,
});
