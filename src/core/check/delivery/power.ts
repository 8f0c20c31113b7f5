import type { Derived } from '../../trace/derived.ts';
import { largestPower } from '../../working/load/largest-power.ts';
import { companyOf } from '../../working/load/other-loads.ts';
import { type PromisedPower, promisedPowers } from '../../working/load/power-facts.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { atLeast, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { heldLine } from '../held-line.ts';
import { worstAnswer } from '../worst-answer.ts';

/** Does the output deliver the power that is printed, inside its voltage window? */
export const power = defineCheck<PromisedPower>({
  id: 'delivery/power',
  consequence: 'disappointing',
  needs: ['sweep'],
  subjects: ({ bench, levels }) => (levels.length > 0 ? promisedPowers(bench, levels) : 'notLooked'),
  judge: ({ bench, setting }, { levels, least }) => {
    const judged = levels.flatMap((level) => {
      const limit = least(level);
      return limit === null ? [] : [answerAt(level, limit, (sweep) => companyOf(bench, sweep, level.port.id) === '', setting.decision)];
    });
    if (judged.length === 0) return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noClaim', args: {} }] }) };
    return bestOf(judged);
  },
});

type Sweeps = LevelFacts['nearest'][number]['sweep'];

/** The worst of the runs at one level with the neighbours idle. */
function answerAt(
  level: LevelFacts,
  limit: Derived,
  alone: (exhibit: Sweeps['exhibit']) => boolean,
  rule: Parameters<typeof atLeast>[2],
): Answer {
  const { window } = level;
  if (level.nearest.length === 0 || window === null)
    return { judgement: undecided('notAssessed', level.onlyStruck ? 'struck' : 'notLooked') };
  const line = heldLine('claimedPower', limit, window);
  const answers = level.nearest.flatMap(({ sweep }): Answer[] => {
    const largest = alone(sweep.exhibit) ? largestPower(sweep, window) : null;
    return largest === null
      ? []
      : [
          {
            judgement: atLeast(largest, line, rule),
            notes: [{ key: 'heldAt', args: { exhibit: sweep.exhibit.id, mains: sweep.mains?.value ?? 'notStated' } }],
          },
        ];
  });
  return answers.length > 0
    ? worstAnswer(answers)
    : { judgement: undecided('notAssessed', 'notComparable', { notes: [{ key: 'neighboursLoaded', args: {} }] }) };
}

const BEST_FIRST = ['pass', 'inconclusive', 'notAssessed', 'fail', 'notApplicable'];

/** A printed power is kept when one of the levels delivers it; it is missed when each of them was tried and misses it. */
function bestOf(answers: readonly Answer[]): Answer {
  const [best] = answers.toSorted(
    (a, b) =>
      BEST_FIRST.indexOf(a.judgement.outcome) - BEST_FIRST.indexOf(b.judgement.outcome) ||
      (a.judgement.margin ?? Number.POSITIVE_INFINITY) - (b.judgement.margin ?? Number.POSITIVE_INFINITY),
  );
  return best!;
}
