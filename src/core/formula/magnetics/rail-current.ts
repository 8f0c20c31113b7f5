import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Mean current that a power takes from the rail behind the rectifier. */
export const railCurrent = defineFormula({
  id: 'magnetics/rail-current',
  tex: String.raw`I = P / V`,
  text: 'I = P / V',
  source: cite('circuit-theory', 'power of a steady voltage', 'secondary', { alsoBy: ['two makers’ data sheets of switched controllers'] }),
  inputs: {
    power: { symbol: 'P', unit: 'W', means: 'power taken', moves: 'up' },
    rail: { symbol: 'V', unit: 'V', means: 'voltage of the rail', moves: 'down' },
  },
  output: { symbol: 'I', unit: 'A', means: 'mean current from the rail' },
  validity: 'a rail that hardly moves within a period of the switch',
  compute: ({ power, rail }) => power / rail,
});
