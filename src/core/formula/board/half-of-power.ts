import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Behind a doubler each of the two capacitors gives half of the power and is charged once in a period. */
export const halfOfPower = defineFormula({
  id: 'board/half-of-power',
  tex: 'P_h = P / 2',
  text: 'P_h = P / 2',
  source: cite('circuit-theory', 'two equal capacitors in series under one current', 'reasoned'),
  inputs: { power: { symbol: 'P', unit: 'W', means: 'input power', moves: 'up' } },
  output: { symbol: 'P_h', unit: 'W', means: 'power from each of two' },
  validity: 'equal capacitors; the shares shift a little while one is charged and the other is not',
  compute: ({ power }) => power / 2,
});
