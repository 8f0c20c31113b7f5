import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Clearance above 30 kHz in another pollution degree than the second, for which the table stands. */
export const distanceInDegree = defineFormula({
  id: 'insulation/distance-in-degree',
  tex: String.raw`d' = k d`,
  text: "d' = k · d",
  source: cite('iec-62368-1', 'table 11, footnote', 'secondary', {
    alsoBy: ['a translated text of table 11', 'an open magnetics library, insulation logic'],
  }),
  inputs: {
    distance: { symbol: 'd', unit: 'm', means: 'clearance in pollution degree 2', moves: 'up' },
    factor: { symbol: 'k', unit: '1', means: 'factor of the degree', moves: 'up' },
  },
  output: { symbol: "d'", unit: 'm', means: 'clearance', show: 'millimetres' },
  validity: 'frequencies above 30 kHz',
  compute: ({ distance, factor }) => distance * factor,
});
