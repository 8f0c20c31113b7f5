import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Temperature of a rectifier's junction above that of its leads: conduction loss times the thermal resistance between them. Leakage and switching left out. */
export const junction = defineFormula({
  id: 'thermal/junction',
  tex: String.raw`T_j = T_l + V_F I R_{\theta JL}`,
  text: 'T_j = T_l + V_F · I · R_th',
  source: cite('heat-theory', 'T_j = T_l + P R_th, as data sheets use it; P = V_F I while a rectifier conducts', 'secondary'),
  inputs: {
    lead: { symbol: 'T_l', unit: 'K', means: 'temperature of lead or case', moves: 'up' },
    forward: { symbol: 'V_F', unit: 'V', means: 'voltage across it while it conducts', moves: 'up' },
    current: { symbol: 'I', unit: 'A', means: 'mean current, that of the output', moves: 'up' },
    resistance: { symbol: 'R_th', unit: '1', means: 'kelvin from junction to lead for each watt', moves: 'up' },
  },
  output: { symbol: 'T_j', unit: 'K', means: 'temperature of the junction' },
  validity: 'one rectifier that carries the whole output; leads at the temperature that was read; a leakage far below the forward current',
  compute: ({ lead, forward, current, resistance }) => lead + forward * current * resistance,
});
