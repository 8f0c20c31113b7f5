import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** A bridge charges twice in a period of the mains, a single diode once. */
export const intervalBetweenCharges = defineFormula({
  id: 'board/interval-between-charges',
  tex: 'T = s / f',
  text: 'T = s / f',
  source: cite('circuit-theory', 'rectifiers', 'reasoned'),
  inputs: {
    share: { symbol: 's', unit: '1', means: 'periods of the mains between two charges', moves: 'up' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'mains frequency', moves: 'down' },
  },
  output: { symbol: 'T', unit: 's', means: 'from crest to crest that charges' },
  validity: 'half a period behind a bridge, a whole one behind a single diode',
  compute: ({ share, frequency }) => share / frequency,
});
