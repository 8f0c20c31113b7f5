import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Current that a resistor across the output draws with nothing connected. */
export const bleederCurrent = defineFormula({
  id: 'feedback/bleeder-current',
  tex: String.raw`I = V_o / R`,
  text: 'I = V_o / R',
  source: cite('circuit-theory', "Ohm's law", 'reasoned'),
  inputs: {
    output: { symbol: 'V_o', unit: 'V', means: 'output', moves: 'up' },
    resistance: { symbol: 'R', unit: 'Ω', means: 'resistor across the output', moves: 'down' },
  },
  output: { symbol: 'I', unit: 'A', means: 'least load of the converter' },
  validity: 'direct voltage',
  compute: ({ output, resistance }) => output / resistance,
});
