import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Clearance by the older standard: by mains, and more where a transformer lifts the peak above that of the mains. Shown, not deciding. */
export const olderClearance = defineFormula({
  id: 'insulation/older-clearance',
  tex: String.raw`d = d_m + d_+`,
  text: 'd = d_m + d_+',
  source: cite('iec-60950-1', 'table 2L beside table 2H', 'secondary', {
    alsoBy: ['two published test reports of adapters, by their totals'],
  }),
  inputs: {
    byMains: { symbol: 'd_m', unit: 'm', means: 'clearance by mains voltage', moves: 'up' },
    more: { symbol: 'd_+', unit: 'm', means: 'more by peak working voltage', moves: 'up' },
  },
  output: { symbol: 'd', unit: 'm', means: 'clearance by the older standard', show: 'millimetres' },
  validity: 'mains of 150 to 300 V',
  compute: ({ byMains, more }) => byMains + more,
});
