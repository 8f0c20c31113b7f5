import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** How much of its marked capacitance a capacitor still has. */
export const shareOfMarked = defineFormula({
  id: 'board/share-of-marked',
  tex: 's = C / C_0',
  text: 's = C / C_0',
  source: cite('bench', 'capacitance as measured over capacitance as marked', 'reasoned'),
  inputs: {
    measured: { symbol: 'C', unit: 'F', means: 'capacitance as measured', moves: 'up' },
    marked: { symbol: 'C_0', unit: 'F', means: 'capacitance as marked', moves: 'down' },
  },
  output: { symbol: 's', unit: '1', means: 'share of the marked value', show: 'percent' },
  validity: 'measured at 100 or 120 Hz for electrolytic capacitors; a meter at 1 kHz and above reads low',
  compute: ({ measured, marked }) => measured / marked,
});
