import { cite } from '../../source/source.ts';
import type { Note } from '../../trace/step.ts';
import { kindOfLimit } from '../../working/load/kind-of-limit.ts';
import { slopesOf } from '../../working/load/slopes-of.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import type { Window } from '../../working/load/window-of.ts';
import { type LimitLine, oneOf, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { worstAnswer } from '../worst-answer.ts';

const LIMITS = ['constantCurrent', 'constantPower', 'foldback', 'hiccup', 'latchOff'];

const LIMIT: LimitLine = {
  name: 'someLimit',
  kind: 'oneOf',
  at: null,
  words: LIMITS,
  source: cite('bench', 'an output has a limit of its own, not only what its parts happen to give', 'common-practice'),
  grade: 'common-practice',
};

/**
 * Which kind of limit has the output beyond its window? Met when the sweep shows one that has a name; an output that gives more and more while
 * its voltage sinks has none. Informative: it sets no word.
 */
export const regulationMode = defineCheck<LevelFacts>({
  id: 'delivery/regulation-mode',
  consequence: 'informative',
  needs: ['sweepBeyond'],
  subjects: ({ levels }) => (levels.length > 0 ? levels : 'notLooked'),
  judge: (_facts, level) => {
    const { window, nearest: alone, inCompany } = level;
    if (alone.length === 0 && inCompany.length > 0)
      return { judgement: undecided('notAssessed', 'notComparable', { notes: [{ key: 'neighboursLoaded', args: {} }] }) };
    if (alone.length === 0) return { judgement: undecided('notAssessed', level.onlyStruck ? 'struck' : 'notLooked') };
    if (window === null) return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noWindow', args: {} }] }) };
    const slopes = slopesOf(level, alone);
    const worst = worstAnswer(
      alone.map(({ sweep }): Answer => {
        const found = kindOfLimit(sweep, window);
        const from: Note = { key: 'limitFrom', args: { exhibit: sweep.exhibit.id } };
        const fields = [`/exhibits/${sweep.exhibit.id}/table`];
        if (found === null)
          return {
            judgement: undecided('notAssessed', 'notLooked', { fields, notes: [{ key: 'notSweptBeyond', args: {} }] }),
            notes: [from],
          };
        if (found === 'unknown')
          return {
            judgement: undecided('inconclusive', 'unknownValue', { fields, notes: [{ key: 'shapeUnknown', args: {} }] }),
            notes: [from],
          };
        return {
          judgement: oneOf(found.kind, LIMIT, LIMITS.includes(found.kind), fields),
          notes: [from, { key: `limit-${found.kind}`, args: { ...found.figures } }],
        };
      }),
    );
    return { ...worst, beside: slopes.steps, notes: [...(worst.notes ?? []), ...elsewhere(level, window), ...slopes.notes] };
  },
});

/** What the runs at other mains show: two things can be true, one at each. */
function elsewhere({ sweeps, nearest, inCompany }: LevelFacts, window: Window): Note[] {
  return sweeps
    .filter((sweep) => sweep.mains !== null && ![...nearest, ...inCompany].some((one) => one.sweep === sweep))
    .flatMap((sweep): Note[] => {
      const found = kindOfLimit(sweep, window);
      return found === null || found === 'unknown'
        ? []
        : [{ key: 'limitElsewhere', args: { mains: sweep.mains?.value ?? 'notStated', kind: found.kind } }];
    });
}
