import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Peak voltage with which procedure 1 is entered: the working voltage or the temporary overvoltage, whichever is greater. */
export const greatestPeak = defineFormula({
  id: 'insulation/greatest-peak',
  tex: String.raw`V_p = \max(V_w, V_{to})`,
  text: 'V_p = max( V_w ; V_to )',
  source: cite('iec-62368-1', 'clause 5.4.2.3', 'secondary', { alsoBy: ['an open magnetics library, insulation logic'] }),
  inputs: {
    working: { symbol: 'V_w', unit: 'V', means: 'peak working voltage', moves: 'up' },
    overvoltage: { symbol: 'V_to', unit: 'V', means: 'temporary overvoltage, peak', moves: 'up' },
  },
  output: { symbol: 'V_p', unit: 'V', means: 'greatest peak' },
  validity: 'frequencies to 30 kHz; above, another table is added',
  compute: ({ working, overvoltage }) => Math.max(working, overvoltage),
  branch: ({ working, overvoltage }) => (working > overvoltage ? 'working voltage' : 'temporary overvoltage'),
});
