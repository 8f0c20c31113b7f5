import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Voltage that a rectifier diode blocks with a capacitor behind it. */
export const reverseVoltage = defineFormula({
  id: 'board/reverse-voltage',
  tex: String.raw`V_R = n \hat V`,
  text: 'V_R = n · V_pk',
  source: cite(
    'circuit-theory',
    'rectifiers with a capacitor: one crest in a bridge, two behind a single diode and in a doubler',
    'reasoned',
  ),
  inputs: {
    crest: { symbol: 'V_pk', unit: 'V', means: 'crest of the mains', moves: 'up' },
    crests: { symbol: 'n', unit: '1', means: 'crests that the diode blocks', moves: 'up' },
  },
  output: { symbol: 'V_R', unit: 'V', means: 'reverse voltage' },
  validity: 'steady mains; a surge adds to it',
  compute: ({ crest, crests }) => crests * crest,
});
