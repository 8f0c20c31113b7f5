import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const CHANCE = 0.05; // a share of failures as large as this result would have let all tries go well in one case of twenty

/** Largest share of failures that tries without a single one still allow, at 95 %: exact for independent tries; about 3 / n for many. */
export const noFailureBound = defineFormula({
  id: 'load/no-failure-bound',
  tex: 'q = 1 - 0.05^{1/n}',
  text: 'q = 1 − 0.05 ^ ( 1 / n )',
  source: cite('binomial', 'upper limit of a share when nothing happened in n tries', 'secondary', {
    alsoBy: ['public notes on the rule of three'],
  }),
  inputs: { tries: { symbol: 'n', unit: '1', means: 'tries made, none of which failed', moves: 'down', from: 1 } },
  output: { symbol: 'q', unit: '1', means: 'largest share of failures that fits, at 95 %', show: 'percent' },
  validity: 'independent tries under the same conditions, no failure among them',
  compute: ({ tries }) => 1 - Math.exp(Math.log(CHANCE) / tries),
});
