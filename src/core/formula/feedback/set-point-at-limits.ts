import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** The same with every part at the edge of its tolerance. */
export const setPointAtLimits = defineFormula({
  id: 'feedback/set-point-at-limits',
  tex: String.raw`V_o = V_r (1 + s\,a)\left(1 + \frac{R_1 (1 + s\,b)}{R_2 (1 - s\,c)}\right) + I_r R_1 (1 + s\,b)`,
  text: 'V_o = V_r · ( 1 + s · a ) · ( 1 + R_1 · ( 1 + s · b ) / ( R_2 · ( 1 - s · c ) ) ) + I_r · R_1 · ( 1 + s · b )',
  source: cite(
    'reference-sheets',
    'output by divider: the current into the reference pin adds to the drop of the upper resistor',
    'secondary',
    { disagrees: ['two pages of one maker print the current with a minus sign'] },
  ),
  inputs: {
    reference: { symbol: 'V_r', unit: 'V', means: 'reference voltage', moves: 'up' },
    referenceShare: { symbol: 'a', unit: '1', means: 'its tolerance as a share' },
    upper: { symbol: 'R_1', unit: 'Ω', means: 'resistor from the output to the reference pin', moves: 'up' },
    upperShare: { symbol: 'b', unit: '1', means: 'its tolerance as a share' },
    lower: { symbol: 'R_2', unit: 'Ω', means: 'resistor from the reference pin to the return', moves: 'down' },
    lowerShare: { symbol: 'c', unit: '1', means: 'its tolerance as a share' },
    current: { symbol: 'I_r', unit: 'A', means: 'current into the reference pin at this edge', moves: 'up' },
    sign: { symbol: 's', unit: '1', means: '1 for the upper edge, −1 for the lower' },
  },
  output: { symbol: 'V_o', unit: 'V', means: 'output with everything at its edge' },
  validity: 'tolerances below 1; the reference is in regulation',
  compute: ({ reference, referenceShare, upper, upperShare, lower, lowerShare, current, sign }) =>
    reference * (1 + sign * referenceShare) * (1 + (upper * (1 + sign * upperShare)) / (lower * (1 - sign * lowerShare))) +
    current * upper * (1 + sign * upperShare),
});
