import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Temperature around a capacitor from that of its can: the core is hotter than the can by its own heat, the can a share of it above the air. */
export const aroundTheCan = defineFormula({
  id: 'endurance/around-the-can',
  tex: String.raw`T_a = T_c - \frac{\Delta T}{\alpha}`,
  text: 'T_a = T_c − ΔT / α',
  source: cite('capacitor-makers', 'one maker’s lifetime sheet: α 1.0 up to 8 mm, 1.1 at 10 and 12.5, 1.2 at 16 and 18 mm', 'secondary'),
  inputs: {
    can: { symbol: 'T_c', unit: 'K', means: 'temperature of the can', moves: 'up' },
    heating: { symbol: 'ΔT', unit: 'ΔK', means: 'heating of the core by its own ripple', moves: 'down', from: 0, to: 20 },
    ratio: { symbol: 'α', unit: '1', means: 'heating of the core over that of the can', moves: 'up', from: 1, to: 1.6 },
  },
  output: { symbol: 'T_a', unit: 'K', means: 'temperature around the can' },
  validity: 'a can in free air; one that stands against a hot neighbour is read too hot on that side',
  compute: ({ can, heating, ratio }) => can - heating / ratio,
});
