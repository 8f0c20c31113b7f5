import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What must at least be across the pins to hold this voltage against the probe alone; a bleeder beside it asks for more. */
export const leastCapacitance = defineFormula({
  id: 'touch/least-capacitance',
  tex: String.raw`C \ge \frac{t}{R_p \ln(V_0/V_m)}`,
  text: 'C = t / ( R_p · ln( V_0 / V_m ) )',
  source: cite('circuit-theory', 'discharge of a capacitor through a resistor', 'reasoned'),
  inputs: {
    after: { symbol: 't', unit: 's', means: 'time since unplugging', moves: 'up' },
    probe: { symbol: 'R_p', unit: 'Ω', means: 'input resistance of the probe or meter', moves: 'down' },
    start: { symbol: 'V_0', unit: 'V', means: 'most that the discharge can have started at', moves: 'down' },
    read: { symbol: 'V_m', unit: 'V', means: 'voltage read with the probe on', moves: 'up' },
  },
  output: { symbol: 'C', unit: 'F', means: 'least capacitance across the pins' },
  validity: 'the probe was connected from the moment of unplugging',
  compute: ({ after, probe, start, read }) => after / (probe * Math.log(start / read)),
});
