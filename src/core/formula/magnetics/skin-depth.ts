import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const RHO_20_OHM_METRE = 1.7241e-8; // annealed copper at 20 °C, the international standard of 1913; from memory, agrees with a wire handbook within 1 %
const ALPHA_PER_KELVIN = 0.00393; // of the same standard
const REFERENCE_K = 293.15;

const MU0_HENRY_PER_METRE = 4e-7 * Math.PI; // to nine digits, CODATA 2018

/** Depth at which a current in copper has fallen to 37 %. */
export const skinDepth = defineFormula({
  id: 'magnetics/skin-depth',
  tex: String.raw`\delta = \sqrt{\rho(T) / (\pi f \mu_0)}`,
  text: 'δ = sqrt( ρ · ( 1 + α · ( T − 293 K ) ) / ( π · f · 4π · 1e−7 ) )',
  source: cite('wire-handbook', 'equation 4-6, and a core maker’s note on planar transformers at 60 °C', 'secondary'),
  inputs: {
    temperature: { symbol: 'T', unit: 'K', means: 'temperature of the winding', moves: 'up' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'frequency of the current', moves: 'down' },
  },
  output: { symbol: 'δ', unit: 'm', means: 'skin depth', show: 'millimetres' },
  validity: 'copper',
  compute: ({ temperature, frequency }) =>
    Math.sqrt((RHO_20_OHM_METRE * (1 + ALPHA_PER_KELVIN * (temperature - REFERENCE_K))) / (Math.PI * frequency * MU0_HENRY_PER_METRE)),
});
