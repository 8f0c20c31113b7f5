import { derive } from '../formula/derive.ts';
import { noFailureBound } from '../formula/load/no-failure-bound.ts';
import { cite } from '../source/source.ts';
import { given } from '../trace/derived.ts';
import type { Facts } from '../working/facts.ts';
import type { Tries } from '../working/load/tries-facts.ts';
import { atMost, type LimitLine, limitLine, undecided } from './decide.ts';
import type { Answer } from './define-check.ts';

export const ENOUGH = 5; // tries without a failure; fewer leave more than every other one open (1 - 0.05^(1/4) = 0.53)

/** One failure is enough; without one it takes enough tries, and what they leave open is said. */
export function judgeTries(id: string, tries: Tries | null, { setting }: Facts): Answer {
  if (tries?.onlyStruck === true) return { judgement: undecided('notAssessed', 'struck') };
  if (tries === null || (tries.made.value === 0 && tries.failed.value === 0)) return { judgement: undecided('notAssessed', 'notLooked') };
  const { made, failed } = tries;
  const counts = { made: made.value, failed: failed.value };
  if (failed.value > 0)
    return { judgement: atMost(failed, noFailure(), setting.decision), beside: [made.step], notes: [{ key: 'triesFailed', args: counts }] };
  const bound = derive(noFailureBound, { tries: made }, `load/tries-${id}-bound`);
  const notes = [{ key: 'noneFailed', args: { made: made.value, bound: bound.value } }];
  if (made.value < ENOUGH)
    return {
      judgement: undecided('inconclusive', 'oneSided', { measured: failed, limit: noFailure() }),
      beside: [bound.step],
      notes: [...notes, { key: 'tooFewTries', args: { least: ENOUGH } }],
    };
  return { judgement: atMost(failed, noFailure(), setting.decision), beside: [bound.step], notes };
}

function noFailure(): LimitLine {
  const source = cite('house', 'an adapter comes up every time; five tries are the least that count', 'common-practice');
  return limitLine('noFailure', 'atMost', given('constant', 0, '1', { id: 'load/no-failure', name: 'noFailure', symbol: 'm', source }));
}
