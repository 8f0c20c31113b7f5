import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Primary turns at which a core reaches a flux density at the peak of the current. */
export const turnsOfFlux = defineFormula({
  id: 'magnetics/turns-of-flux',
  tex: String.raw`N = \frac{L \hat I}{B A_e}`,
  text: 'N = L · I_pk / ( B · A_e )',
  source: cite('circuit-theory', 'flux linkage', 'secondary', { alsoBy: ['a core maker’s note on planar transformers, three designs'] }),
  inputs: {
    inductance: { symbol: 'L', unit: 'H', means: 'primary inductance', moves: 'up' },
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'up' },
    flux: { symbol: 'B', unit: 'T', means: 'flux density at the peak', moves: 'down' },
    area: { symbol: 'A_e', unit: 'm²', means: 'effective area of the core', moves: 'down' },
  },
  output: { symbol: 'N', unit: '1', means: 'primary turns' },
  validity: 'a flux that starts from nothing; below saturation',
  compute: ({ inductance, peak, flux, area }) => (inductance * peak) / (flux * area),
});
