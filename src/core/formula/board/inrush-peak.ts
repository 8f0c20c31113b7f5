import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Current at the moment of plugging in at the crest of the mains, with the bulk capacitor empty. */
export const inrushPeak = defineFormula({
  id: 'board/inrush-peak',
  tex: String.raw`\hat I = \hat V / R`,
  text: 'I_pk = V_pk / R',
  source: cite('circuit-theory', 'charging a capacitor through a resistance, first moment', 'reasoned'),
  inputs: {
    crest: { symbol: 'V_pk', unit: 'V', means: 'crest of the mains', moves: 'up' },
    resistance: { symbol: 'R', unit: 'Ω', means: 'resistance of the loop', moves: 'down' },
  },
  output: { symbol: 'I_pk', unit: 'A', means: 'peak of the inrush current' },
  validity: 'an empty capacitor without resistance of its own; inductance, which lowers the peak, left out',
  compute: ({ crest, resistance }) => crest / resistance,
});
