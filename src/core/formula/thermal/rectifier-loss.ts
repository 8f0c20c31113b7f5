import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Loss of a rectifier that carries the whole output, while it conducts. */
export const rectifierLoss = defineFormula({
  id: 'thermal/rectifier-loss',
  tex: String.raw`P = V_F I`,
  text: 'P = V_F · I',
  source: cite('heat-theory', 'voltage times mean current', 'reasoned'),
  inputs: {
    forward: { symbol: 'V_F', unit: 'V', means: 'voltage across it while it conducts', moves: 'up' },
    current: { symbol: 'I', unit: 'A', means: 'mean current, that of the output', moves: 'up' },
  },
  output: { symbol: 'P', unit: 'W', means: 'loss' },
  validity: 'a voltage that hardly depends on the current',
  compute: ({ forward, current }) => forward * current,
});
