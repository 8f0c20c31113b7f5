import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';
import { roundUp } from '../round-up.ts';

const STEP_M = 0.1e-3;

const MM_PER_M = 1000;

/** Basic creepage after interpolation, rounded up to the next tenth of a millimetre before anything is doubled. */
export const roundUpCreepage = defineFormula({
  id: 'insulation/round-up-creepage',
  tex: String.raw`d' = \lceil d / 0.1\,\mathrm{mm} \rceil\, 0.1\,\mathrm{mm}`,
  text: "d' = d rounded up to 0.1 mm",
  source: cite('iec-62368-1', 'table 17, footnote on interpolation', 'secondary', {
    alsoBy: [
      'a published test report: 281 V rms, reinforced 5.8 mm, which needs rounding before doubling',
      'a component data sheet quoting the older standard',
    ],
    disagrees: ['an open magnetics library doubles first and rounds afterwards'],
  }),
  inputs: { distance: { symbol: 'd', unit: 'm', means: 'interpolated creepage', moves: 'up' } },
  output: { symbol: "d'", unit: 'm', means: 'basic creepage, rounded up', show: 'millimetres' },
  validity: 'none given',
  compute: ({ distance }) => roundUp(distance, STEP_M),
  sensitivity: () => ({ distance: 1 }),
  branch: ({ distance }) => `${Number((roundUp(distance, STEP_M) * MM_PER_M).toPrecision(6))} mm`,
});
