import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Output at which the supply of a controller reaches the voltage where it stops. */
export const outputAtTrip = defineFormula({
  id: 'feedback/output-at-trip',
  tex: String.raw`V_o = (V_t + V_d) N_s / N_a - V_f`,
  text: 'V_o = ( V_t + V_d ) · N_s / N_a - V_f',
  source: cite('circuit-theory', 'flyback windings hold their voltages by turns', 'reasoned'),
  inputs: {
    trip: { symbol: 'V_t', unit: 'V', means: 'supply voltage at which the controller stops', moves: 'up' },
    auxiliaryDrop: { symbol: 'V_d', unit: 'V', means: 'drop of the auxiliary diode', moves: 'up' },
    secondary: { symbol: 'N_s', unit: '1', means: 'turns of the secondary', moves: 'up' },
    auxiliary: { symbol: 'N_a', unit: '1', means: 'turns of the auxiliary winding', moves: 'down' },
    outputDrop: { symbol: 'V_f', unit: 'V', means: 'drop of the output diode', moves: 'down' },
  },
  output: { symbol: 'V_o', unit: 'V', means: 'output at the trip' },
  validity: 'good coupling; at light load the auxiliary rail lags and the output can pass above',
  compute: ({ trip, auxiliaryDrop, secondary, auxiliary, outputDrop }) => ((trip + auxiliaryDrop) * secondary) / auxiliary - outputDrop,
});
