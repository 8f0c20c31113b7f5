import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Output of a self-oscillating converter whose Zener stands between base and a negative auxiliary rail. */
export const auxiliarySetPoint = defineFormula({
  id: 'feedback/auxiliary-set-point',
  tex: String.raw`V_o = (V_z + V_d - V_{be}) N_s / N_a - V_f`,
  text: 'V_o = ( V_z + V_d - V_be ) · N_s / N_a - V_f',
  source: cite('circuit-theory', 'flyback windings hold their voltages by turns; Zener, base and auxiliary diode in a row', 'reasoned'),
  inputs: {
    zener: { symbol: 'V_z', unit: 'V', means: 'Zener voltage', moves: 'up' },
    auxiliaryDrop: { symbol: 'V_d', unit: 'V', means: 'drop of the auxiliary diode', moves: 'up' },
    base: { symbol: 'V_be', unit: 'V', means: 'base voltage at which the switch is held off', moves: 'down' },
    secondary: { symbol: 'N_s', unit: '1', means: 'turns of the secondary' },
    auxiliary: { symbol: 'N_a', unit: '1', means: 'turns of the auxiliary winding' },
    outputDrop: { symbol: 'V_f', unit: 'V', means: 'drop of the output diode', moves: 'down' },
  },
  output: { symbol: 'V_o', unit: 'V', means: 'output that is set' },
  validity: 'good coupling and a sound auxiliary capacitor; a dried one lets the output rise',
  compute: ({ zener, auxiliaryDrop, base, secondary, auxiliary, outputDrop }) =>
    ((zener + auxiliaryDrop - base) * secondary) / auxiliary - outputDrop,
});
