import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** A creepage distance is never required to be shorter than the clearance of the same pair. */
export const notBelowClearance = defineFormula({
  id: 'insulation/not-below-clearance',
  tex: String.raw`d = \max(d_{cr}, d_{cl})`,
  text: 'd = max( d_cr ; d_cl )',
  source: cite('iec-62368-1', 'clause 5.4.3.1', 'secondary', { alsoBy: ['an open magnetics library, insulation logic'] }),
  inputs: {
    creepage: { symbol: 'd_cr', unit: 'm', means: 'creepage by working voltage', moves: 'up' },
    clearance: { symbol: 'd_cl', unit: 'm', means: 'required clearance', moves: 'up' },
  },
  output: { symbol: 'd', unit: 'm', means: 'required creepage', show: 'millimetres' },
  validity: 'none given',
  compute: ({ creepage, clearance }) => Math.max(creepage, clearance),
  branch: ({ creepage, clearance }) => (clearance > creepage ? 'clearance' : 'creepage'),
});
