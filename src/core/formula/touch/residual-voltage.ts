import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What is left on a capacitor so long after its resistor began to discharge it. */
export const residualVoltage = defineFormula({
  id: 'touch/residual-voltage',
  tex: String.raw`V = V_0\,e^{-t/(R C)}`,
  text: 'V = V_0 · exp( -1 · t / ( R · C ) )',
  source: cite('circuit-theory', 'discharge of a capacitor through a resistor', 'reasoned'),
  inputs: {
    start: { symbol: 'V_0', unit: 'V', means: 'voltage at the moment of unplugging', moves: 'up' },
    after: { symbol: 't', unit: 's', means: 'time since unplugging', moves: 'down' },
    resistance: { symbol: 'R', unit: 'Ω', means: 'everything that discharges, in parallel', moves: 'up' },
    capacitance: { symbol: 'C', unit: 'F', means: 'capacitance across the pins', moves: 'up' },
  },
  output: { symbol: 'V', unit: 'V', means: 'voltage left' },
  validity: 'a plain resistor; a chip that discharges after unplugging does something else',
  compute: ({ start, after, resistance, capacitance }) => start * Math.exp(-after / (resistance * capacitance)),
});
