import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const POINTS = 4; // load points of the regulation

/** Average active efficiency: the mean of the efficiencies at a quarter, half, three quarters and all of the nameplate current. */
export const averageOfFour = defineFormula({
  id: 'load/average-of-four',
  tex: String.raw`\bar\eta = \tfrac14 (\eta_{25} + \eta_{50} + \eta_{75} + \eta_{100})`,
  text: 'η_m = ( η_25 + η_50 + η_75 + η_100 ) / 4',
  source: cite('eu-2019-1782', 'annex I, average active efficiency', 'secondary', {
    alsoBy: ['a converter maker’s guide to the regulation'],
  }),
  inputs: {
    quarter: { symbol: 'η_25', unit: '1', means: 'efficiency at 25 %', moves: 'up' },
    half: { symbol: 'η_50', unit: '1', means: 'efficiency at 50 %', moves: 'up' },
    threeQuarters: { symbol: 'η_75', unit: '1', means: 'efficiency at 75 %', moves: 'up' },
    full: { symbol: 'η_100', unit: '1', means: 'efficiency at 100 %', moves: 'up' },
  },
  output: { symbol: 'η_m', unit: '1', means: 'average active efficiency', show: 'percent' },
  validity: 'all four points held; never extrapolated',
  compute: ({ quarter, half, threeQuarters, full }) => (quarter + half + threeQuarters + full) / POINTS,
});
