import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Leakage at which a blocking Schottky rectifier heats itself as fast as it sheds heat: beyond it the temperature runs away. */
export const runawayLeakage = defineFormula({
  id: 'thermal/runaway-leakage',
  tex: String.raw`I_{lim} = \frac{1}{V_R \, s \, c \, R_{\theta JA}}`,
  text: 'I_lim = 1 / ( V_R · s · c · R_th )',
  source: cite('diode-makers', 'a maker’s note on the greatest junction temperature of Schottky rectifiers', 'secondary'),
  inputs: {
    reverse: { symbol: 'V_R', unit: 'V', means: 'voltage that it blocks', moves: 'down' },
    share: { symbol: 's', unit: '1', means: 'share of the time for which it blocks', from: 0, to: 1, moves: 'down' },
    growth: { symbol: 'c', unit: '1', means: 'growth of the leakage for each kelvin', moves: 'down' },
    resistance: { symbol: 'R_th', unit: '1', means: 'kelvin from junction to ambient for each watt', moves: 'down' },
  },
  output: { symbol: 'I_lim', unit: 'A', means: 'leakage at the brink' },
  validity: 'leakage that grows exponentially with temperature; heat that is shed in proportion to the rise',
  compute: ({ reverse, share, growth, resistance }) => 1 / (reverse * share * growth * resistance),
});
