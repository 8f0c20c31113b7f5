import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const RHO_20_OHM_METRE = 1.7241e-8; // annealed copper at 20 °C, the international standard of 1913; from memory, agrees with a wire handbook within 1 %
const ALPHA_PER_KELVIN = 0.00393; // of the same standard
const REFERENCE_K = 293.15;

const CIRCLE = 4; // area of a circle by its diameter

/** Resistance of a winding to direct current. */
export const copperResistance = defineFormula({
  id: 'magnetics/copper-resistance',
  tex: String.raw`R = \rho(T) \frac{N l}{s \pi d^2 / 4}`,
  text: 'R = ρ · ( 1 + α · ( T − 293 K ) ) · N · l / ( s · π · d ² / 4 )',
  source: cite('wire-handbook', 'table 4-9, within 1 %; resistivity from memory', 'memory'),
  inputs: {
    turns: { symbol: 'N', unit: '1', means: 'turns', moves: 'up' },
    meanTurn: { symbol: 'l', unit: 'm', means: 'mean length of a turn', moves: 'up' },
    strands: { symbol: 's', unit: '1', means: 'strands in parallel', moves: 'down' },
    diameter: { symbol: 'd', unit: 'm', means: 'bare diameter of a strand', moves: 'down' },
    temperature: { symbol: 'T', unit: 'K', means: 'temperature of the winding', moves: 'up' },
  },
  output: { symbol: 'R', unit: 'Ω', means: 'resistance of the winding' },
  validity: 'copper',
  compute: ({ turns, meanTurn, strands, diameter, temperature }) =>
    (RHO_20_OHM_METRE * (1 + ALPHA_PER_KELVIN * (temperature - REFERENCE_K)) * turns * meanTurn) /
    ((strands * Math.PI * diameter * diameter) / CIRCLE),
});
