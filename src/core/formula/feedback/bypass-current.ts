import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Current that the resistor across the LED hands to the reference. */
export const bypassCurrent = defineFormula({
  id: 'feedback/bypass-current',
  tex: String.raw`I_b = V_F / R_b`,
  text: 'I_b = V_F / R_b',
  source: cite('circuit-theory', "Ohm's law", 'reasoned'),
  inputs: {
    drop: { symbol: 'V_F', unit: 'V', means: 'drop of the LED', moves: 'up' },
    resistance: { symbol: 'R_b', unit: 'Ω', means: 'resistor across the LED', moves: 'down' },
  },
  output: { symbol: 'I_b', unit: 'A', means: 'current past the LED' },
  validity: 'the LED conducts',
  compute: ({ drop, resistance }) => drop / resistance,
});
