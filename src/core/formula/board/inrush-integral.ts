import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What the inrush asks of a fuse: the integral of the squared current of an exponential charge. */
export const inrushIntegral = defineFormula({
  id: 'board/inrush-integral',
  tex: String.raw`I^2t = \frac{\hat V^2 C}{2 R}`,
  text: 'J = V_pk ² · C / ( 2 · R )',
  source: cite('circuit-theory', 'charging a capacitor through a resistance: integral of the squared current', 'reasoned'),
  inputs: {
    crest: { symbol: 'V_pk', unit: 'V', means: 'crest of the mains', moves: 'up' },
    capacitance: { symbol: 'C', unit: 'F', means: 'bulk capacitance', moves: 'up' },
    resistance: { symbol: 'R', unit: 'Ω', means: 'resistance of the loop', moves: 'down' },
  },
  output: { symbol: 'J', unit: 'A²s', means: 'integral of the squared inrush current' },
  validity: 'a charge that is short against the mains period, from an empty capacitor, at constant resistance',
  compute: ({ crest, capacitance, resistance }) => (crest * crest * capacitance) / (2 * resistance),
});
