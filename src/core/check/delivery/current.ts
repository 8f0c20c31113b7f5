import { derive } from '../../formula/derive.ts';
import { share } from '../../formula/load/share.ts';
import { weakestGrade } from '../../source/grade.ts';
import type { Note } from '../../trace/step.ts';
import { hotOverCold, lostInCable } from '../../working/load/run-comparison.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { causeNotes } from '../cause-notes.ts';
import { atLeast, type LimitLine, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { worstAnswer } from '../worst-answer.ts';

/** Does the output hold its voltage window up to the current that is claimed? */
export const current = defineCheck<LevelFacts>({
  id: 'delivery/current',
  consequence: 'disappointing',
  needs: ['sweep'],
  subjects: ({ levels }) => (levels.length > 0 ? levels : 'notLooked'),
  judge: (facts, level) => {
    const { bench, setting } = facts;
    if (level.claim === null || level.claim.value <= 0)
      return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noClaim', args: {} }] }) };
    if (level.nearest.length === 0) return { judgement: undecided('notAssessed', level.onlyStruck ? 'struck' : 'notLooked') };
    if (level.window === null) return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noWindow', args: {} }] }) };
    const claim = level.claim;
    const limit = claimLine(level);
    const worst = worstAnswer(
      level.nearest.map(({ sweep, held }): Answer => {
        if (held === null) return { judgement: undecided('notAssessed', 'notLooked') };
        const part = derive(share, { held, claimed: claim }, `load/${sweep.exhibit.id}/share`);
        const notes = [
          { key: 'heldAt', args: { exhibit: sweep.exhibit.id, mains: sweep.mains?.value ?? 'notStated', sense: sweep.exhibit.sense } },
        ];
        const judgement = atLeast(held, limit, setting.decision);
        const cause = judgement.outcome === 'fail' ? causeNotes(facts, level, sweep) : [];
        return { judgement, beside: [part.step], notes: [...notes, ...cause] };
      }),
    );
    const hot = hotOverCold(bench, level);
    const cable = lostInCable(level, (held) => WORDS[atLeast(held, limit, setting.decision).outcome] ?? 'open');
    const more: Note[] = [
      ...(hot === null ? [] : [{ key: 'hotOverCold', args: { ratio: hot.value } }]),
      ...(cable === null ? [] : [cable]),
    ];
    return { ...worst, beside: [...(worst.beside ?? []), ...(hot === null ? [] : [hot.step])], notes: [...(worst.notes ?? []), ...more] };
  },
});

const WORDS: Readonly<Record<string, 'yes' | 'no'>> = { pass: 'yes', fail: 'no' };

/** The claim stands on the label, the window on its table: the line takes the weaker of the two. */
function claimLine(level: LevelFacts): LimitLine {
  const claim = limitLine('claim', 'atLeast', level.claim!);
  const edges = limitLine('window', 'within', level.window!.least, level.window!.most);
  const grade = weakestGrade([claim.grade, edges.grade]);
  return { ...claim, grade, source: grade === claim.grade ? claim.source : edges.source };
}
