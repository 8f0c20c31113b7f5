import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Current that a transistor must sink to pull its load resistor down. */
export const pulledCurrent = defineFormula({
  id: 'feedback/pulled-current',
  tex: String.raw`I_c = (V_{dd} - V_s) / R_p`,
  text: 'I_c = ( V_dd - V_s ) / R_p',
  source: cite('circuit-theory', "Ohm's law", 'reasoned'),
  inputs: {
    supply: { symbol: 'V_dd', unit: 'V', means: 'supply of the load resistor', moves: 'up' },
    saturation: { symbol: 'V_s', unit: 'V', means: 'voltage left across the transistor', moves: 'down' },
    resistance: { symbol: 'R_p', unit: 'Ω', means: 'load resistor' },
  },
  output: { symbol: 'I_c', unit: 'A', means: 'current to be pulled' },
  validity: 'none given',
  compute: ({ supply, saturation, resistance }) => (supply - saturation) / resistance,
});
