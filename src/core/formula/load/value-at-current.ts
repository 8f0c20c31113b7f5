import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Voltage or power at a current between two rows of a sweep: a straight line. Never used outside the rows. */
export const valueAtCurrent = defineFormula({
  id: 'load/value-at-current',
  tex: String.raw`P = P_a + (I - I_a)\frac{P_b - P_a}{I_b - I_a}`,
  text: 'P = P_a + ( I − I_a ) · ( P_b − P_a ) / ( I_b − I_a )',
  source: cite('circuit-theory', 'linear interpolation', 'reasoned'),
  inputs: {
    current: { symbol: 'I', unit: 'A', means: 'current asked for' },
    currentBefore: { symbol: 'I_a', unit: 'A', means: 'current of the row before' },
    currentAfter: { symbol: 'I_b', unit: 'A', means: 'current of the row after' },
    before: { symbol: 'P_a', unit: 'W', means: 'power of the row before' },
    after: { symbol: 'P_b', unit: 'W', means: 'power of the row after' },
  },
  output: { symbol: 'P', unit: 'W', means: 'power at the current asked for' },
  validity: 'the current lies between the two rows',
  compute: ({ current, currentBefore, currentAfter, before, after }) =>
    before + ((current - currentBefore) * (after - before)) / (currentAfter - currentBefore),
});
