import type { Derived } from '../../trace/derived.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { limitLine, undecided, within } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { worstAnswer } from '../worst-answer.ts';

const AT_THE_CLAIM = 0.001; // a row this little above the claim is still at the claim

/** Is the voltage inside its window at every load up to the claim? */
export const voltageWindow = defineCheck<LevelFacts>({
  id: 'delivery/voltage-window',
  consequence: 'disappointing',
  needs: ['sweep'],
  subjects: ({ levels }) => (levels.length > 0 ? levels : 'notLooked'),
  judge: ({ setting }, level) => {
    const { window, claim } = level;
    if (level.nearest.length === 0) return { judgement: undecided('notAssessed', 'notLooked') };
    if (window === null) return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noWindow', args: {} }] }) };
    const limit = limitLine('window', 'within', window.least, window.most);
    const middle = (window.least.value + window.most.value) / 2;
    return worstAnswer(
      level.nearest.map(({ sweep }): Answer => {
        const rows = sweep.rows.filter((row) => claim === null || row.current.value <= claim.value * (1 + AT_THE_CLAIM));
        const worst = rows.map(({ voltage }) => voltage).sort((a: Derived, b: Derived) => Math.abs(b.value - middle) - Math.abs(a.value - middle))[0];
        if (worst === undefined) return { judgement: undecided('notAssessed', 'notLooked') };
        const notes = [{ key: 'worstOfRows', args: { rows: rows.length, exhibit: sweep.exhibit.id } }];
        return { judgement: within(worst, limit, setting.decision), notes };
      }),
    );
  },
});
