import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Line that the trade draws so that a fuse stands many pluggings in; shown, not deciding. */
export const halfOfIntegral = defineFormula({
  id: 'board/half-of-integral',
  tex: 'J_h = J_m / 2',
  text: 'J_h = J_m / 2',
  source: cite('bench', 'inrush at most half of the melting integral', 'common-practice'),
  inputs: { melting: { symbol: 'J_m', unit: 'A²s', means: 'melting integral of the fuse', moves: 'up' } },
  output: { symbol: 'J_h', unit: 'A²s', means: 'half of the melting integral' },
  validity: 'a rule of the trade; makers give curves by number of pulses',
  compute: ({ melting }) => melting / 2,
});
