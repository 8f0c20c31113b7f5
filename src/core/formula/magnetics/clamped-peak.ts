import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Greatest voltage of the switch where a clamp holds the spike of the leakage. */
export const clampedPeak = defineFormula({
  id: 'magnetics/clamped-peak',
  tex: String.raw`\hat V_s = V + V_c`,
  text: 'V_pk = V + V_c',
  source: cite('circuit-theory', 'voltages in series', 'secondary', {
    alsoBy: ['a maker’s data sheet of switched controllers, equation 15'],
  }),
  inputs: {
    rail: { symbol: 'V', unit: 'V', means: 'voltage of the rail', moves: 'up' },
    clamp: { symbol: 'V_c', unit: 'V', means: 'voltage of the clamp above the rail', moves: 'up' },
  },
  output: { symbol: 'V_pk', unit: 'V', means: 'greatest voltage of the switch' },
  validity: 'the clamp as read, at full load',
  compute: ({ rail, clamp }) => rail + clamp,
});
