import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Rise of the primary current in one stroke. */
export const rippleCurrent = defineFormula({
  id: 'magnetics/ripple-current',
  tex: String.raw`\Delta I = V D / (L f)`,
  text: 'dI = V · D / ( L · f )',
  source: cite('circuit-theory', 'voltage across an inductor', 'secondary', { alsoBy: ['a maker’s data sheet of switched controllers'] }),
  inputs: {
    rail: { symbol: 'V', unit: 'V', means: 'voltage of the rail', moves: 'up' },
    share: { symbol: 'D', unit: '1', means: 'share of the period', moves: 'up' },
    inductance: { symbol: 'L', unit: 'H', means: 'primary inductance', moves: 'down' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'frequency of the switch', moves: 'down' },
  },
  output: { symbol: 'dI', unit: 'A', means: 'rise of the current' },
  validity: 'fixed frequency',
  compute: ({ rail, share, inductance, frequency }) => (rail * share) / (inductance * frequency),
});
