import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Output current of a converter that holds it from the primary side. */
export const heldOutputCurrent = defineFormula({
  id: 'magnetics/held-output-current',
  tex: String.raw`I_o = k \frac{n \hat I}{2} d`,
  text: 'I_o = k · n · I_pk · d / 2',
  source: cite('circuit-theory', 'mean of a triangle', 'reasoned'),
  inputs: {
    coupling: { symbol: 'k', unit: '1', means: 'what of the current arrives', moves: 'up' },
    ratio: { symbol: 'n', unit: '1', means: 'turns ratio', moves: 'up' },
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'up' },
    share: { symbol: 'd', unit: '1', means: 'share of the period in which the core empties', moves: 'up' },
  },
  output: { symbol: 'I_o', unit: 'A', means: 'output current' },
  validity: 'primary-side constant current',
  compute: ({ coupling, ratio, peak, share }) => (coupling * ratio * peak * share) / 2,
});
