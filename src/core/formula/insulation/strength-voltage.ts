import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Test voltage of an insulation: by transients, by the peak of the working voltage, by temporary overvoltages, the greatest of the three. */
export const strengthVoltage = defineFormula({
  id: 'insulation/strength-voltage',
  tex: String.raw`U = \max(U_{25}, U_{26}, U_{27})`,
  text: 'U = max( U_25 ; U_26 ; U_27 )',
  source: cite('iec-62368-1', 'clause 5.4.9.1', 'secondary', {
    alsoBy: ['an open magnetics library, insulation logic', 'a published test report: 4000 V d.c. across reinforced insulation at 230 V'],
  }),
  inputs: {
    transient: { symbol: 'U_25', unit: 'V', means: 'by the required withstand voltage', moves: 'up' },
    peak: { symbol: 'U_26', unit: 'V', means: 'by the peak working voltage', moves: 'up' },
    overvoltage: { symbol: 'U_27', unit: 'V', means: 'by temporary overvoltages', moves: 'up' },
  },
  output: { symbol: 'U', unit: 'V', means: 'test voltage, peak or d.c.' },
  validity: 'solid insulation and barriers as a whole; a pass dry at room temperature is not the pass of a laboratory',
  compute: ({ transient, peak, overvoltage }) => Math.max(transient, peak, overvoltage),
  branch: ({ transient, peak, overvoltage }) =>
    transient >= peak && transient >= overvoltage ? 'transients' : peak >= overvoltage ? 'working voltage' : 'temporary overvoltage',
});
