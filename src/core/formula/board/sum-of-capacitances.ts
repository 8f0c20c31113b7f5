import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

export const sumOfCapacitances = defineFormula({
  id: 'board/sum-of-capacitances',
  tex: 'C = C_1 + C_2',
  text: 'C = C_1 + C_2',
  source: cite('circuit-theory', 'capacitances in parallel', 'reasoned'),
  inputs: {
    one: { symbol: 'C_1', unit: 'F', means: 'one capacitance', moves: 'up' },
    other: { symbol: 'C_2', unit: 'F', means: 'the other', moves: 'up' },
  },
  output: { symbol: 'C', unit: 'F', means: 'bulk capacitance' },
  validity: 'in parallel, or joined by a small resistance or inductance',
  compute: ({ one, other }) => one + other,
});
