import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** The least power that a printed figure can stand for: printed figures are rounded. */
export const leastPowerMeant = defineFormula({
  id: 'label/least-power-meant',
  tex: String.raw`P_l = P - \frac{d}{2}`,
  text: 'P_l = P - d / 2',
  source: cite('house', 'a printed figure is taken as rounded to its last digit', 'common-practice'),
  inputs: {
    printed: { symbol: 'P', unit: 'W', means: 'power as printed', moves: 'up' },
    digit: { symbol: 'd', unit: 'W', means: 'one step of its last digit', moves: 'down' },
  },
  output: { symbol: 'P_l', unit: 'W', means: 'least power that it can stand for' },
  validity: 'figures rounded to the nearest',
  compute: ({ printed, digit }) => printed - digit / 2,
});
