import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const FLOOR_V = 2000; // V peak, mains to 250 V
const ADDED_V = 1200; // V added to the nominal voltage

/** Peak of the temporary overvoltage that a clearance on the mains must stand, procedure 1. */
export const temporaryOvervoltage = defineFormula({
  id: 'insulation/temporary-overvoltage',
  tex: String.raw`V_{to} = \max(2000\,\mathrm{V},\ U + 1200\,\mathrm{V})`,
  text: 'V_to = max( 2000 V ; U + 1200 V )',
  source: cite('iec-62368-1', 'clause 5.4.2.3.2.3, temporary overvoltages', 'secondary', {
    alsoBy: ['an open magnetics library, insulation logic', 'a data sheet example of insulation coordination: U + 1200 V'],
  }),
  inputs: { mains: { symbol: 'U', unit: 'V', means: 'nominal mains voltage, rms', moves: 'up', to: 250 } },
  output: { symbol: 'V_to', unit: 'V', means: 'temporary overvoltage, peak' },
  validity: 'mains to 250 V; above it the floor is 2500 V, which this formula does not hold',
  compute: ({ mains }) => Math.max(FLOOR_V, mains + ADDED_V),
  branch: ({ mains }) => (mains + ADDED_V > FLOOR_V ? 'U + 1200 V' : '2000 V'),
});
