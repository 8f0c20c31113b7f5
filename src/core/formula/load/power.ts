import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Output power of one row. */
export const power = defineFormula({
  id: 'load/power',
  tex: String.raw`P = V I`,
  text: 'P = V · I',
  source: cite('circuit-theory', 'power in a d.c. load', 'reasoned'),
  inputs: {
    voltage: { symbol: 'V', unit: 'V', means: 'output voltage', moves: 'up' },
    current: { symbol: 'I', unit: 'A', means: 'output current', moves: 'up' },
  },
  output: { symbol: 'P', unit: 'W', means: 'output power' },
  validity: 'd.c., or ripple small against the mean',
  compute: ({ voltage, current }) => voltage * current,
});
