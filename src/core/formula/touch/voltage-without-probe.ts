import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/**
 * The meter discharges what it measures. Probe and bleeder in parallel: 1/RC with the probe is 1/R_bC plus 1/R_pC, so the probe's part comes
 * off as a factor, whatever the bleeder is and wherever the discharge began.
 */
export const voltageWithoutProbe = defineFormula({
  id: 'touch/voltage-without-probe',
  tex: String.raw`V = V_m\,e^{x}`,
  text: 'V = V_m · exp( x )',
  source: cite('circuit-theory', 'two resistors in parallel discharge a capacitor', 'reasoned'),
  inputs: {
    read: { symbol: 'V_m', unit: 'V', means: 'voltage read with the probe on', moves: 'up' },
    exponent: { symbol: 'x', unit: '1', means: 'time constants of the probe', moves: 'up' },
  },
  output: { symbol: 'V', unit: 'V', means: 'voltage without the probe' },
  validity: 'the probe was connected from the moment of unplugging',
  compute: ({ read, exponent }) => read * Math.exp(exponent),
});
