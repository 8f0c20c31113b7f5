import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Heat of a current in a resistance. */
export const heatInResistance = defineFormula({
  id: 'magnetics/heat-in-resistance',
  tex: String.raw`P = I^2 R`,
  text: 'P = I ² · R',
  source: cite('circuit-theory', 'Joule', 'secondary', { alsoBy: ['a maker’s data sheet of switched controllers'] }),
  inputs: {
    rms: { symbol: 'I', unit: 'A', means: 'rms current', moves: 'up' },
    resistance: { symbol: 'R', unit: 'Ω', means: 'resistance', moves: 'up' },
  },
  output: { symbol: 'P', unit: 'W', means: 'heat' },
  validity: 'none given',
  compute: ({ rms, resistance }) => rms * rms * resistance,
});
