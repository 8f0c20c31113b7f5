import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Lowest voltage of the bulk capacitor when it is known how long the rectifier conducts: a constant power is drawn from crest to next charge. */
export const valleyAfter = defineFormula({
  id: 'board/valley-after',
  tex: String.raw`V_v = \sqrt{\hat V^2 - \frac{2 P (T - t_c)}{C}}`,
  text: 'V_v = sqrt( V_pk ² − 2 · P · ( T − t_c ) / C )',
  source: cite('circuit-theory', 'energy balance of a capacitor between two charges', 'secondary', {
    alsoBy: ['two makers’ application notes, for a bridge'],
  }),
  inputs: {
    crest: { symbol: 'V_pk', unit: 'V', means: 'crest of the mains', moves: 'up' },
    power: { symbol: 'P', unit: 'W', means: 'power drawn from the capacitor', moves: 'down' },
    capacitance: { symbol: 'C', unit: 'F', means: 'bulk capacitance', moves: 'up' },
    interval: { symbol: 'T', unit: 's', means: 'from crest to crest that charges', moves: 'down' },
    conduction: { symbol: 't_c', unit: 's', means: 'how long the rectifier conducts before the crest', moves: 'up' },
  },
  output: { symbol: 'V_v', unit: 'V', means: 'valley of the bulk voltage' },
  validity: 'constant power; drops of rectifier and limiter left out; zero where the capacitor is empty before the next charge',
  compute: ({ crest, power, capacitance, interval, conduction }) =>
    Math.sqrt(Math.max(0, crest * crest - (2 * power * (interval - conduction)) / capacitance)),
});
