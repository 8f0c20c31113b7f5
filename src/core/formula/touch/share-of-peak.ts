import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** A limit that is given as a share of the crest from which the discharge starts. */
export const shareOfPeak = defineFormula({
  id: 'touch/share-of-peak',
  tex: String.raw`V = k\,\hat V`,
  text: 'V = k · V_pk',
  source: cite('circuit-theory', 'a share', 'reasoned'),
  inputs: {
    share: { symbol: 'k', unit: '1', means: 'share that may be left', moves: 'up' },
    peak: { symbol: 'V_pk', unit: 'V', means: 'crest of the mains', moves: 'up' },
  },
  output: { symbol: 'V', unit: 'V', means: 'voltage that may be left' },
  validity: 'none given',
  compute: ({ share, peak }) => share * peak,
});
