import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Power that the clamp takes: the energy of the leakage and what the primary gives on the way. */
export const clampPower = defineFormula({
  id: 'magnetics/clamp-power',
  tex: String.raw`P_c = \frac{L_l \hat I^2 f}{2} \frac{V_c}{V_c - V_r}`,
  text: 'P_c = L_l · I_pk ² · f / 2 · V_c / ( V_c − V_r )',
  source: cite('circuit-theory', 'energy of the leakage and of the primary while it is clamped', 'memory'),
  inputs: {
    leakage: { symbol: 'L_l', unit: 'H', means: 'leakage inductance', moves: 'up' },
    peak: { symbol: 'I_pk', unit: 'A', means: 'peak current of the primary', moves: 'up' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'frequency of the switch', moves: 'up' },
    clamp: { symbol: 'V_c', unit: 'V', means: 'voltage of the clamp above the rail' },
    reflected: { symbol: 'V_r', unit: 'V', means: 'reflected voltage', moves: 'up' },
  },
  output: { symbol: 'P_c', unit: 'W', means: 'power in the clamp' },
  validity: 'clamp above the reflected voltage',
  compute: ({ leakage, peak, frequency, clamp, reflected }) => (((leakage * peak * peak * frequency) / 2) * clamp) / (clamp - reflected),
});
