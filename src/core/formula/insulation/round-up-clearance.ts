import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';
import { roundUp } from '../round-up.ts';

const FINE_TO_M = 0.5e-3;
const FINE_M = 0.01e-3;
const COARSE_M = 0.1e-3;

const MM_PER_M = 1000;

/** An interpolated clearance is rounded up: to 0.01 mm up to 0.5 mm, to 0.1 mm above. A value that stands in the table is not touched. */
export const roundUpClearance = defineFormula({
  id: 'insulation/round-up-clearance',
  tex: String.raw`d' = \lceil d / q \rceil\, q,\quad q = 0.01\ \text{or}\ 0.1\,\mathrm{mm}`,
  text: "d' = d rounded up to 0.01 mm (to 0.5 mm) or 0.1 mm",
  source: cite('iec-62368-1', 'tables 10 and 11, footnote on interpolation', 'secondary', {
    alsoBy: ['a translated text of table 11'],
    disagrees: ['an open magnetics library changes the step at 5 mm instead of 0.5 mm'],
  }),
  inputs: { distance: { symbol: 'd', unit: 'm', means: 'interpolated clearance', moves: 'up' } },
  output: { symbol: "d'", unit: 'm', means: 'clearance, rounded up', show: 'millimetres' },
  validity: 'none given',
  compute: ({ distance }) => roundUp(distance, distance <= FINE_TO_M ? FINE_M : COARSE_M),
  sensitivity: () => ({ distance: 1 }),
  branch: ({ distance }) => `${Number((roundUp(distance, distance <= FINE_TO_M ? FINE_M : COARSE_M) * MM_PER_M).toPrecision(6))} mm`,
});
