import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** The table of charged capacitors is entered with the rated value plus its tolerance. */
export const greatestCapacitance = defineFormula({
  id: 'touch/greatest-capacitance',
  tex: String.raw`C' = C\,(1 + \tau)`,
  text: "C' = C · ( 1 + τ )",
  source: cite('iec-62368-1', 'table 5, note on the capacitance', 'secondary', {
    alsoBy: ['a national technical regulation that adopts the standard, text extract'],
  }),
  inputs: {
    rated: { symbol: 'C', unit: 'F', means: 'rated capacitance', moves: 'up' },
    tolerance: { symbol: 'τ', unit: '1', means: 'tolerance', moves: 'up' },
  },
  output: { symbol: "C'", unit: 'F', means: 'greatest capacitance' },
  validity: 'none given',
  compute: ({ rated, tolerance }) => rated * (1 + tolerance),
});
