import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Half width of the output when each part strays by itself: the tolerances as a root of the sum of squares, each at its own edge. */
export const setPointSpread = defineFormula({
  id: 'feedback/set-point-spread',
  tex: String.raw`w = \sqrt{\left(a V_r (1 + R_1/R_2)\right)^2 + (V_r R_1/R_2)^2 (b^2 + c^2) + (I_r R_1/2)^2}`,
  text: 'w = √( ( a · V_r · (1 + R_1 / R_2) )² + ( V_r · R_1 / R_2 )² · ( b · b + c · c ) + ( I_r · R_1 / 2 )² )',
  source: cite('circuit-theory', 'first order of the divider rule, tolerances independent', 'reasoned'),
  inputs: {
    reference: { symbol: 'V_r', unit: 'V', means: 'reference voltage' },
    referenceShare: { symbol: 'a', unit: '1', means: 'tolerance of the reference' },
    upper: { symbol: 'R_1', unit: 'Ω', means: 'resistor from the output to the reference pin' },
    upperShare: { symbol: 'b', unit: '1', means: 'its tolerance' },
    lower: { symbol: 'R_2', unit: 'Ω', means: 'resistor from the reference pin to the return' },
    lowerShare: { symbol: 'c', unit: '1', means: 'its tolerance' },
    current: { symbol: 'I_r', unit: 'A', means: 'most current into the reference pin; anywhere between nothing and that' },
  },
  output: { symbol: 'w', unit: 'V', means: 'half width of the output' },
  validity: 'tolerances small against one and independent of each other',
  compute: ({ reference, referenceShare, upper, upperShare, lower, lowerShare, current }) => {
    const ratio = upper / lower;
    const ofReference = referenceShare * reference * (1 + ratio);
    const ofResistors = reference * ratio;
    const ofCurrent = (current * upper) / 2;
    return Math.sqrt(
      ofReference * ofReference + ofResistors * ofResistors * (upperShare * upperShare + lowerShare * lowerShare) + ofCurrent * ofCurrent,
    );
  },
});
