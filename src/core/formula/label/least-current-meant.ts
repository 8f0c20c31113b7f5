import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** The least current that a printed figure can stand for: printed figures are rounded. */
export const leastCurrentMeant = defineFormula({
  id: 'label/least-current-meant',
  tex: String.raw`I_l = I - \frac{d}{2}`,
  text: 'I_l = I - d / 2',
  source: cite('house', 'a printed figure is taken as rounded to its last digit', 'common-practice'),
  inputs: {
    printed: { symbol: 'I', unit: 'A', means: 'current as printed', moves: 'up' },
    digit: { symbol: 'd', unit: 'A', means: 'one step of its last digit', moves: 'down' },
  },
  output: { symbol: 'I_l', unit: 'A', means: 'least current that it can stand for' },
  validity: 'figures rounded to the nearest',
  compute: ({ printed, digit }) => printed - digit / 2,
});
