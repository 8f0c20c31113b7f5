import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Current that the mains drives through a capacitor across the barrier into an earthed person: an upper bound, since it takes the capacitor as
 * fed from a line conductor and the body as a short. A capacitor on a rectified rail passes less (0.5 to 0.71 of it, rms). */
export const bridgingCurrent = defineFormula({
  id: 'insulation/bridging-current',
  tex: String.raw`I = 2\pi f C V`,
  text: 'I = 2π · f · C · V',
  source: cite('circuit-theory', 'current through a capacitor, sinusoidal steady state', 'reasoned'),
  inputs: {
    frequency: { symbol: 'f', unit: 'Hz', means: 'mains frequency', moves: 'up' },
    capacitance: { symbol: 'C', unit: 'F', means: 'capacitance across the barrier', moves: 'up' },
    voltage: { symbol: 'V', unit: 'V', means: 'mains voltage, rms', moves: 'up' },
  },
  output: { symbol: 'I', unit: 'A', means: 'current into earth, rms', show: 'milliamperes' },
  validity: 'sinusoidal mains; the reactance much larger than the body (C below about 100 nF)',
  compute: ({ frequency, capacitance, voltage }) => 2 * Math.PI * frequency * capacitance * voltage,
});
