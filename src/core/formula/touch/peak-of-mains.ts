import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Crest of a sinusoidal mains: what a capacitor across the pins holds when the plug leaves the socket at the worst moment. */
export const peakOfMains = defineFormula({
  id: 'touch/peak-of-mains',
  tex: String.raw`\hat V = \sqrt{2}\,V`,
  text: 'V_pk = √2 · V',
  source: cite('circuit-theory', 'crest of a sine', 'reasoned'),
  inputs: { rms: { symbol: 'V', unit: 'V', means: 'mains voltage, rms', moves: 'up' } },
  output: { symbol: 'V_pk', unit: 'V', means: 'crest of the mains' },
  validity: 'sinusoidal mains; an inverter or generator can have another crest',
  compute: ({ rms }) => Math.SQRT2 * rms,
});
