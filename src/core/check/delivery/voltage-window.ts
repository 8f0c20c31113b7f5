import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { limitLine, undecided, within } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { worstAnswer } from '../worst-answer.ts';

const NEAR_THE_CLAIM = 0.02; // a sweep that ends this near to the claim has reached it
const AT_THE_CLAIM = 0.001; // a row this little above the claim is still at the claim

/** Is the voltage inside its window at every load up to the claim? */
export const voltageWindow = defineCheck<LevelFacts>({
  id: 'delivery/voltage-window',
  consequence: 'disappointing',
  needs: ['sweep'],
  subjects: ({ levels }) => (levels.length > 0 ? levels : 'notLooked'),
  judge: ({ setting }, level) => {
    const { window, claim } = level;
    if (level.nearest.length === 0) return { judgement: undecided('notAssessed', level.onlyStruck ? 'struck' : 'notLooked') };
    if (window === null) return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noWindow', args: {} }] }) };
    const limit = limitLine('window', 'within', window.least, window.most);
    const middle = (window.least.value + window.most.value) / 2;
    return worstAnswer(
      level.nearest.map(({ sweep }): Answer => {
        const rows = sweep.rising.filter((row) => claim === null || row.current.value <= claim.value * (1 + AT_THE_CLAIM));
        const whole = rows.map(({ voltage }) => voltage).filter(({ side }) => side === undefined);
        const farthest = whole.toSorted((a, b) => Math.abs(b.value - middle) - Math.abs(a.value - middle)).slice(0, 1);
        // a bound (a row off the range) is open or beyond by itself, wherever the other rows lie
        const tried = [...farthest, ...rows.map(({ voltage }) => voltage).filter(({ side }) => side !== undefined)];
        if (tried.length === 0) return { judgement: undecided('notAssessed', 'notLooked') };
        const notes = [{ key: 'worstOfRows', args: { rows: rows.length, exhibit: sweep.exhibit.id } }];
        const worst = worstAnswer(tried.map((voltage) => ({ judgement: within(voltage, limit, setting.decision) })));
        const reached = claim === null || sweep.rows.some((row) => row.current.value >= claim.value * (1 - NEAR_THE_CLAIM));
        if (worst.judgement.outcome === 'pass' && !reached)
          return {
            judgement: { ...worst.judgement, outcome: 'inconclusive', reason: 'outOfRange' },
            notes: [...notes, { key: 'claimNotReached', args: { claimA: claim.value } }],
          };
        return { judgement: worst.judgement, notes };
      }),
    );
  },
});
