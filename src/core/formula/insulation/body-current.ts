import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Current through a person who touches a voltage, from hand to hand or hand to foot. */
export const bodyCurrent = defineFormula({
  id: 'insulation/body-current',
  tex: String.raw`I = U / Z`,
  text: 'I = U / Z',
  source: cite('circuit-theory', 'Ohm', 'reasoned'),
  inputs: {
    voltage: { symbol: 'U', unit: 'V', means: 'voltage touched', moves: 'up' },
    impedance: { symbol: 'Z', unit: 'Ω', means: 'impedance of the body at that voltage', moves: 'down' },
  },
  output: { symbol: 'I', unit: 'A', means: 'current through the body' },
  validity: 'dry skin, large contact; nothing else in the way',
  compute: ({ voltage, impedance }) => voltage / impedance,
});
