import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Two capacitors across the same pins add. */
export const parallelCapacitance = defineFormula({
  id: 'touch/parallel-capacitance',
  tex: 'C = C_1 + C_2',
  text: 'C = C_1 + C_2',
  source: cite('circuit-theory', 'capacitors in parallel', 'reasoned'),
  inputs: {
    one: { symbol: 'C_1', unit: 'F', means: 'one capacitor across the pins', moves: 'up' },
    two: { symbol: 'C_2', unit: 'F', means: 'another across the pins', moves: 'up' },
  },
  output: { symbol: 'C', unit: 'F', means: 'capacitance across the pins' },
  validity: 'chokes and fuses between them do not matter on this time scale',
  compute: ({ one, two }) => one + two,
});
