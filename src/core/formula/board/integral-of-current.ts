import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

export const integralOfCurrent = defineFormula({
  id: 'board/integral-of-current',
  tex: 'J = I^2 t',
  text: 'J = I ² · t',
  source: cite('circuit-theory', 'a constant current', 'reasoned'),
  inputs: {
    current: { symbol: 'I', unit: 'A', means: 'current', moves: 'up' },
    time: { symbol: 't', unit: 's', means: 'how long', moves: 'up' },
  },
  output: { symbol: 'J', unit: 'A²s', means: 'integral of the squared current' },
  validity: 'a current that does not change',
  compute: ({ current, time }) => current * current * time,
});
