import { derive } from '../../formula/derive.ts';
import { kneeRatio } from '../../formula/load/knee-ratio.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Note } from '../../trace/step.ts';
import { type RangeEnd, rangeEnds } from '../../working/load/range-ends.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { causeNotes } from '../cause-notes.ts';
import { atLeast, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { heldLine } from '../held-line.ts';
import { worstAnswer } from '../worst-answer.ts';

/** Is the claim held at both ends of the mains range? */
export const mainsRange = defineCheck<LevelFacts>({
  id: 'delivery/mains-range',
  consequence: 'disappointing',
  needs: ['sweepAtEnds'],
  subjects: ({ levels }) => (levels.length > 0 ? levels : 'notLooked'),
  judge: (facts, level) => {
    const { bench, setting } = facts;
    const { claim, window } = level;
    if (claim === null || claim.value <= 0) return open('limitUnknown', { key: 'noClaim', args: {} });
    if (window === null) return open('limitUnknown', { key: 'noWindow', args: {} });
    if (level.onlyStruck) return { judgement: undecided('notAssessed', 'struck') };
    const ends = rangeEnds(bench, setting, level);
    const limit = heldLine('claim', claim, window);
    const answers = ends.flatMap(({ runs, which }) =>
      runs.map(({ sweep, held }): Answer => {
        const at = { exhibit: sweep.exhibit.id, mains: sweep.mains?.value ?? 'notStated', sense: sweep.exhibit.sense };
        const judgement = atLeast(held, limit, setting.decision);
        const cause = judgement.outcome === 'fail' ? causeNotes(facts, level, sweep) : [];
        return { judgement, notes: [{ key: which === 'low' ? 'lowestMains' : 'highestMains', args: at }, ...cause] };
      }),
    );
    const untried = ends
      .filter(({ runs }) => runs.length === 0)
      .map(({ which, mains }): Note => ({ key: which === 'low' ? 'lowestNotTried' : 'highestNotTried', args: { mains: mains.value } }));
    if (answers.length === 0) return { judgement: undecided('notAssessed', 'notLooked', { notes: untried }) };
    const worst = worstAnswer(answers, 'severalThings');
    // one good end is not a range; one bad end is enough
    if (untried.length > 0 && worst.judgement.outcome === 'pass')
      return { judgement: undecided('notAssessed', 'notLooked', { notes: untried }) };
    const ratio = ratioOf(level, ends);
    const told: Note[] = ratio === null ? [] : [{ key: 'kneeRatio', args: { ratio: ratio.value } }];
    const notes = [...(worst.notes ?? []), ...causesElsewhere(worst, answers), ...untried, ...told];
    return { ...worst, notes, beside: ratio === null ? [] : [ratio.step] };
  },
});

/** Two causes can be true, one at either end: that of an end which is not the worst is said too. */
function causesElsewhere(worst: Answer, answers: readonly Answer[]): Note[] {
  const causes = (one: Answer): Note[] => (one.notes ?? []).filter(({ key }) => key.startsWith('cause'));
  const told = new Set(causes(worst).map(({ args }) => args['mains']));
  return answers.flatMap(causes).filter(({ args }) => {
    const isNew = !told.has(args['mains']);
    told.add(args['mains']);
    return isNew;
  });
}

function open(reason: 'limitUnknown', note: Note): Answer {
  return { judgement: undecided('notAssessed', reason, { notes: [note] }) };
}

/** The least held at each end, where both are known to leave the window. */
function ratioOf(level: LevelFacts, ends: readonly RangeEnd[]): Derived | null {
  const [low, high] = ends.map(({ runs }) => runs.map(({ held }) => held).toSorted((a, b) => a.value - b.value)[0]);
  if (low === undefined || high === undefined || low.side !== undefined || high.side !== undefined || high.value <= 0) return null;
  return derive(kneeRatio, { low, high }, `load/${level.port.id}/${level.level.id}/knee-ratio`);
}
