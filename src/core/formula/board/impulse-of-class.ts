import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const ONE_MICROFARAD = 1e-6; // up to which the printed impulse holds

/** Impulse that a capacitor of class X1, X2 or Y2 has stood: above 1 µF it falls with the square root of the capacitance. */
export const impulseOfClass = defineFormula({
  id: 'board/impulse-of-class',
  tex: String.raw`\hat U = \frac{\hat U_1}{\sqrt{\max(1, C / 1\,\mathrm{\mu F})}}`,
  text: 'U_p = U_1 / sqrt( max( 1 ; C / 1 µF ) )',
  source: cite('iec-60384-14', 'impulse voltage test', 'secondary', {
    alsoBy: ['a capacitor maker, classes of X and Y capacitors: X1 and X2', 'a calculator on a public page: also Y2'],
  }),
  inputs: {
    impulse: { symbol: 'U_1', unit: 'V', means: 'impulse of the class to 1 µF', moves: 'up' },
    capacitance: { symbol: 'C', unit: 'F', means: 'capacitance', moves: 'down' },
  },
  output: { symbol: 'U_p', unit: 'V', means: 'impulse it has stood' },
  validity: 'classes X1, X2 and Y2; the others do not depend on the capacitance',
  compute: ({ impulse, capacitance }) => impulse / Math.sqrt(Math.max(1, capacitance / ONE_MICROFARAD)),
});
