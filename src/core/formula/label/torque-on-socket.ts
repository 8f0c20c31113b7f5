import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const STANDARD_GRAVITY = 9.80665; // m/s², exact: third General Conference on Weights and Measures, 1901

/** What a unit that hangs in a socket does to it, turned into the worst position: its weight on the arm from the pivot behind the engagement face. */
export const torqueOnSocket = defineFormula({
  id: 'label/torque-on-socket',
  tex: String.raw`M = m\,g\,(x + d)`,
  text: 'M = 9.80665 · m · ( x + d )',
  source: cite('iec-60065', 'clause 15.4, torque of devices that form part of the mains plug', 'secondary', {
    alsoBy: ['a maker of test equipment describes the test'],
  }),
  inputs: {
    mass: { symbol: 'm', unit: 'kg', means: 'mass of the unit', moves: 'up' },
    centre: { symbol: 'x', unit: 'm', means: 'centre of mass in front of the engagement face', moves: 'up' },
    pivot: { symbol: 'd', unit: 'm', means: 'pivot behind the engagement face', moves: 'up' },
  },
  output: { symbol: 'M', unit: 'N·m', means: 'torque on the socket' },
  validity: 'a unit without a cord at its mains end, in the worst of its positions',
  compute: ({ mass, centre, pivot }) => mass * STANDARD_GRAVITY * (centre + pivot),
});
