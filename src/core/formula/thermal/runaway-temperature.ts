import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Junction temperature at which the leakage of a Schottky rectifier reaches the brink of thermal runaway. */
export const runawayTemperature = defineFormula({
  id: 'thermal/runaway-temperature',
  tex: String.raw`T_{lim} = T_0 + \frac{1}{c} \ln \frac{I_{lim}}{I_0}`,
  text: 'T_lim = T_0 + ln( I_lim / I_0 ) / c',
  source: cite('diode-makers', 'a maker’s note on the greatest junction temperature of Schottky rectifiers', 'secondary'),
  inputs: {
    known: { symbol: 'T_0', unit: 'K', means: 'junction temperature at which the leakage is given', moves: 'up' },
    brink: { symbol: 'I_lim', unit: 'A', means: 'leakage at the brink', moves: 'up' },
    leakage: { symbol: 'I_0', unit: 'A', means: 'leakage given', moves: 'down' },
    growth: { symbol: 'c', unit: '1', means: 'growth of the leakage for each kelvin' },
  },
  output: { symbol: 'T_lim', unit: 'K', means: 'junction temperature at the brink' },
  validity: 'the leakage at the voltage that is really blocked; the greatest of its sheet gives a bound from below',
  compute: ({ known, brink, leakage, growth }) => known + Math.log(brink / leakage) / growth,
});
