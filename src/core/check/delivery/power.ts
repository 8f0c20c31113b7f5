import type { Derived } from '../../trace/derived.ts';
import type { Facts } from '../../working/facts.ts';
import { largestPower } from '../../working/load/largest-power.ts';
import { type PromisedPower, promisedPowers } from '../../working/load/power-facts.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { causeNotes } from '../cause-notes.ts';
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
  judge: (facts, { levels, least }) => {
    const judged = levels.flatMap((level) => {
      const limit = least(level);
      return limit === null ? [] : [answerAt(facts, level, limit)];
    });
    if (judged.length === 0) return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noClaim', args: {} }] }) };
    return bestOf(judged);
  },
});

/** The worst of the runs at one level with the neighbours idle. */
function answerAt(facts: Facts, level: LevelFacts, limit: Derived): Answer {
  const { window, nearest, inCompany } = level;
  if (nearest.length === 0 && inCompany.length > 0)
    return { judgement: undecided('notAssessed', 'notComparable', { notes: [{ key: 'neighboursLoaded', args: {} }] }) };
  if (nearest.length === 0 || window === null) return { judgement: undecided('notAssessed', level.onlyStruck ? 'struck' : 'notLooked') };
  const line = heldLine('claimedPower', limit, window);
  const answers = nearest.flatMap(({ sweep }): Answer[] => {
    const largest = largestPower(sweep, window);
    const notes = [{ key: 'heldAt', args: { exhibit: sweep.exhibit.id, mains: sweep.mains?.value ?? 'notStated' } }];
    if (largest === null) return [];
    const judgement = atLeast(largest, line, facts.setting.decision);
    return [{ judgement, notes: judgement.outcome === 'fail' ? [...notes, ...causeNotes(facts, level, sweep)] : notes }];
  });
  return answers.length > 0 ? worstAnswer(answers) : { judgement: undecided('notAssessed', 'notLooked') };
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
