import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Current of the primary in the middle of a stroke: its mean while the switch is closed, and where a trapezoid on a screen is read. */
export const middleOfStroke = defineFormula({
  id: 'magnetics/middle-of-stroke',
  tex: String.raw`I_m = I / D`,
  text: 'I_m = I / D',
  source: cite('circuit-theory', 'mean over a share of a period', 'secondary', {
    alsoBy: ['two makers’ data sheets of switched controllers'],
  }),
  inputs: {
    mean: { symbol: 'I', unit: 'A', means: 'mean current from the rail', moves: 'up' },
    share: { symbol: 'D', unit: '1', means: 'share of the period in which the switch is closed', from: 0, to: 1, moves: 'down' },
  },
  output: { symbol: 'I_m', unit: 'A', means: 'primary current in the middle of a stroke' },
  validity: 'a straight ramp',
  compute: ({ mean, share }) => mean / share,
});
