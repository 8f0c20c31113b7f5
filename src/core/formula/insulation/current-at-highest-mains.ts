import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** A touch current measured at one mains voltage and frequency, as it would be at the highest mains: through capacitance it grows with V f. */
export const currentAtHighestMains = defineFormula({
  id: 'insulation/current-at-highest-mains',
  tex: String.raw`I_h = I\,\frac{V_h f_h}{V f}`,
  text: 'I_h = I · V_h · f_h / ( V · f )',
  source: cite('circuit-theory', 'current through a capacitor, sinusoidal steady state', 'reasoned'),
  inputs: {
    current: { symbol: 'I', unit: 'A', means: 'touch current as measured', moves: 'up' },
    voltage: { symbol: 'V', unit: 'V', means: 'mains voltage at the bench', moves: 'down' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'mains frequency at the bench', moves: 'down' },
    highestVoltage: { symbol: 'V_h', unit: 'V', means: 'highest mains voltage', moves: 'up' },
    highestFrequency: { symbol: 'f_h', unit: 'Hz', means: 'mains frequency there', moves: 'up' },
  },
  output: { symbol: 'I_h', unit: 'A', means: 'touch current at the highest mains', show: 'milliamperes' },
  validity: 'the current is capacitive, which touch currents of small adapters are',
  compute: ({ current, voltage, frequency, highestVoltage, highestFrequency }) =>
    (current * highestVoltage * highestFrequency) / (voltage * frequency),
});
