import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Current to earth from the voltage that it leaves across a known resistance: the network's 500 Ω, a plain 2 kΩ, or the input of a meter. */
export const currentFromVoltage = defineFormula({
  id: 'touch/current-from-voltage',
  tex: String.raw`I = \frac{V}{R}`,
  text: 'I = V / R',
  source: cite('iec-60990', 'figure 4: the reading U2 over 500 Ω', 'secondary', {
    alsoBy: ['a published service text: 0.35 V at the network for 0.7 mA peak, 1.0 V at 500 Ω for 2 mA d.c.'],
  }),
  inputs: {
    voltage: { symbol: 'V', unit: 'V', means: 'voltage across it', moves: 'up' },
    resistance: { symbol: 'R', unit: 'Ω', means: 'resistance between the conductor and earth', moves: 'down' },
  },
  output: { symbol: 'I', unit: 'A', means: 'current to earth', show: 'milliamperes' },
  validity: 'a plain resistor for sinusoidal or direct current only; through a meter less flows than through a hand',
  compute: ({ voltage, resistance }) => voltage / resistance,
});
