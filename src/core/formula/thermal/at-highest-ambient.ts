import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Temperature of a part at another ambient. A loss that grows with temperature makes it follow a little more than one to one. */
export const atHighestAmbient = defineFormula({
  id: 'thermal/at-highest-ambient',
  tex: String.raw`T' = T + k\,(T_a' - T_a)`,
  text: "T' = T + k · ( T_a' − T_a )",
  source: cite('iec-62368-1', 'clause B.2.6.1, rises taken to the highest ambient', 'secondary', {
    alsoBy: ['a published test report: limits cut by the difference of ambients'],
  }),
  inputs: {
    temperature: { symbol: 'T', unit: 'K', means: 'temperature as read', moves: 'up' },
    factor: { symbol: 'k', unit: '1', means: 'kelvin of part per kelvin of ambient: 1.00 to 1.15' },
    ambient: { symbol: 'T_a', unit: 'K', means: 'ambient at the reading', moves: 'down' },
    highest: { symbol: "T_a'", unit: 'K', means: 'highest ambient of the setting', moves: 'up' },
  },
  output: { symbol: "T'", unit: 'K', means: 'temperature at the highest ambient' },
  validity: 'a step of ambient of 20 K or so; not within 15 K of a foldback or a runaway',
  compute: ({ temperature, factor, ambient, highest }) => temperature + factor * (highest - ambient),
});
