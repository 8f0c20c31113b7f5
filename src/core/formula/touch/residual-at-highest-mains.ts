import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** The same discharge from the crest of the highest mains: everything is proportional to where it starts. */
export const residualAtHighestMains = defineFormula({
  id: 'touch/residual-at-highest-mains',
  tex: String.raw`V' = V\,\frac{\hat V_h}{V_0}`,
  text: "V' = V · V_h / V_0",
  source: cite('circuit-theory', 'a linear circuit scales with its starting voltage', 'reasoned'),
  inputs: {
    voltage: { symbol: 'V', unit: 'V', means: 'voltage left in this run', moves: 'up' },
    highest: { symbol: 'V_h', unit: 'V', means: 'crest of the highest mains', moves: 'up' },
    start: { symbol: 'V_0', unit: 'V', means: 'voltage at which this run started, or the most it can have started at', moves: 'down' },
  },
  output: { symbol: "V'", unit: 'V', means: 'voltage left after unplugging at the crest of the highest mains' },
  validity: 'resistive discharge',
  compute: ({ voltage, highest, start }) => (voltage * highest) / start,
});
