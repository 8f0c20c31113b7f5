import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Primary turns over secondary turns. */
export const turnsRatio = defineFormula({
  id: 'magnetics/turns-ratio',
  tex: String.raw`n = N_p / N_s`,
  text: 'n = N_p / N_s',
  source: cite('circuit-theory', 'ideal transformer', 'reasoned'),
  inputs: {
    primary: { symbol: 'N_p', unit: '1', means: 'primary turns', moves: 'up' },
    secondary: { symbol: 'N_s', unit: '1', means: 'secondary turns', moves: 'down' },
  },
  output: { symbol: 'n', unit: '1', means: 'turns ratio' },
  validity: 'all turns of a winding in series',
  compute: ({ primary, secondary }) => primary / secondary,
});
