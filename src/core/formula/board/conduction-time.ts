import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** How long before the crest the rising mains meets the falling bulk voltage. */
export const conductionTime = defineFormula({
  id: 'board/conduction-time',
  tex: String.raw`t_c = \frac{\arccos(V_v / \hat V)}{2\pi f}`,
  text: 't_c = arccos( V_v / V_pk ) / ( 2π · f )',
  source: cite('circuit-theory', 'where a cosine meets a level', 'reasoned'),
  inputs: {
    valley: { symbol: 'V_v', unit: 'V', means: 'valley of the bulk voltage', moves: 'down' },
    crest: { symbol: 'V_pk', unit: 'V', means: 'crest of the mains', moves: 'up' },
    frequency: { symbol: 'f', unit: 'Hz', means: 'mains frequency', moves: 'down' },
  },
  output: { symbol: 't_c', unit: 's', means: 'how long the rectifier conducts before the crest' },
  validity: 'sinusoidal mains without resistance; after the crest the rectifier blocks',
  compute: ({ valley, crest, frequency }) => Math.acos(Math.min(1, Math.max(0, valley / crest))) / (2 * Math.PI * frequency),
});
