import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Reinforced creepage is twice basic. */
export const reinforcedCreepage = defineFormula({
  id: 'insulation/reinforced-creepage',
  tex: String.raw`d_r = 2 d_b`,
  text: 'd_r = 2 · d_b',
  source: cite('iec-62368-1', 'clause 5.4.3.2', 'secondary', {
    alsoBy: [
      'a published test report: 240 V rms, 5.0 mm',
      'a published test report: 281 V rms, 5.8 mm',
      'an open magnetics library, insulation logic',
    ],
  }),
  inputs: { basic: { symbol: 'd_b', unit: 'm', means: 'basic creepage', moves: 'up' } },
  output: { symbol: 'd_r', unit: 'm', means: 'reinforced creepage', show: 'millimetres' },
  validity: 'none given',
  compute: ({ basic }) => 2 * basic,
});
