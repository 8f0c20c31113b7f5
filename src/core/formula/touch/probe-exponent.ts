import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** How many time constants of its own the probe has discharged by the moment of reading. */
export const probeExponent = defineFormula({
  id: 'touch/probe-exponent',
  tex: String.raw`x = \frac{t}{R_p C}`,
  text: 'x = t / ( R_p · C )',
  source: cite('circuit-theory', 'discharge of a capacitor through a resistor', 'reasoned'),
  inputs: {
    after: { symbol: 't', unit: 's', means: 'time since unplugging', moves: 'up' },
    probe: { symbol: 'R_p', unit: 'Ω', means: 'input resistance of the probe or meter', moves: 'down' },
    capacitance: { symbol: 'C', unit: 'F', means: 'capacitance across the pins', moves: 'down' },
  },
  output: { symbol: 'x', unit: '1', means: 'time constants of the probe' },
  validity: 'the probe was connected from the moment of unplugging',
  compute: ({ after, probe, capacitance }) => after / (probe * capacitance),
});
