import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Current at which a load curve crosses a voltage: a straight line between the two rows around the crossing. */
export const currentAtVoltage = defineFormula({
  id: 'load/current-at-voltage',
  tex: String.raw`I_h = I_a + (V_w - V_a)\frac{I_b - I_a}{V_b - V_a} + \delta`,
  text: 'I_h = I_a + ( V_w − V_a ) · ( I_b − I_a ) / ( V_b − V_a ) + δ',
  source: cite('circuit-theory', 'linear interpolation', 'reasoned'),
  inputs: {
    currentBefore: { symbol: 'I_a', unit: 'A', means: 'current of the last row inside the window' },
    currentAfter: { symbol: 'I_b', unit: 'A', means: 'current of the first row outside' },
    voltageBefore: { symbol: 'V_a', unit: 'V', means: 'voltage of the last row inside' },
    voltageAfter: { symbol: 'V_b', unit: 'V', means: 'voltage of the first row outside' },
    edge: { symbol: 'V_w', unit: 'V', means: 'edge of the window that is crossed' },
    between: { symbol: 'δ', unit: 'A', means: 'what the curve may do between the rows: zero, with a doubt' },
  },
  output: { symbol: 'I_h', unit: 'A', means: 'current held inside the window' },
  validity: 'the edge lies between the two rows; the curve is smooth there, else δ takes the whole gap',
  compute: ({ currentBefore, currentAfter, voltageBefore, voltageAfter, edge, between }) =>
    currentBefore + ((edge - voltageBefore) * (currentAfter - currentBefore)) / (voltageAfter - voltageBefore) + between,
});
