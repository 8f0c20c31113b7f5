import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Current that a multiple of its rating is for a fuse. */
export const currentOfGate = defineFormula({
  id: 'board/current-of-gate',
  tex: String.raw`I = k I_n`,
  text: 'I = k · I_n',
  source: cite('iec-60127', 'time-current gates are stated in multiples of the rated current', 'secondary', {
    alsoBy: ['data sheets of several fuse makers'],
  }),
  inputs: {
    multiple: { symbol: 'k', unit: '1', means: 'multiple of the rating', moves: 'up' },
    rated: { symbol: 'I_n', unit: 'A', means: 'rated current', moves: 'up' },
  },
  output: { symbol: 'I', unit: 'A', means: 'current' },
  validity: 'room temperature',
  compute: ({ multiple, rated }) => multiple * rated,
});
