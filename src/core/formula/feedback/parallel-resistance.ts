import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Two resistors side by side. */
export const parallelResistance = defineFormula({
  id: 'feedback/parallel-resistance',
  tex: String.raw`R = R_a R_b / (R_a + R_b)`,
  text: 'R = R_a · R_b / ( R_a + R_b )',
  source: cite('circuit-theory', 'resistors in parallel', 'reasoned'),
  inputs: {
    one: { symbol: 'R_a', unit: 'Ω', means: 'one resistor', moves: 'up' },
    other: { symbol: 'R_b', unit: 'Ω', means: 'the other', moves: 'up' },
  },
  output: { symbol: 'R', unit: 'Ω', means: 'both side by side' },
  validity: 'none given',
  compute: ({ one, other }) => (one * other) / (one + other),
});
