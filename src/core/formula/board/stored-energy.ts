import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Energy that a charged capacitor can give up: what stands behind the rectifier after the plug is out. */
export const storedEnergy = defineFormula({
  id: 'board/stored-energy',
  tex: String.raw`E = \frac{C \hat V^2}{2}`,
  text: 'E = C · V_pk ² / 2',
  source: cite('circuit-theory', 'energy of a charged capacitor', 'reasoned'),
  inputs: {
    capacitance: { symbol: 'C', unit: 'F', means: 'bulk capacitance', moves: 'up' },
    crest: { symbol: 'V_pk', unit: 'V', means: 'voltage across them', moves: 'up' },
  },
  output: { symbol: 'E', unit: 'J', means: 'energy that the bulk capacitors can hold' },
  validity: 'at most charged to the crest of the mains; a converter that corrects its power factor charges higher',
  compute: ({ capacitance, crest }) => (capacitance * crest * crest) / 2,
});
