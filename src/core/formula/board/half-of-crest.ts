import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What each of two equal capacitors in series stands, and each of a doubler that is switched to plain rectifying at the higher mains. */
export const halfOfCrest = defineFormula({
  id: 'board/half-of-crest',
  tex: String.raw`V_h = \hat V / 2`,
  text: 'V_h = V_pk / 2',
  source: cite('circuit-theory', 'two equal capacitors in series', 'reasoned'),
  inputs: { crest: { symbol: 'V_pk', unit: 'V', means: 'crest of the mains', moves: 'up' } },
  output: { symbol: 'V_h', unit: 'V', means: 'voltage on each of two' },
  validity: 'equal capacitors with equal leakage; unequal ones share unequally',
  compute: ({ crest }) => crest / 2,
});
