import { clearanceLimits } from '../../working/insulation/clearance-limits.ts';
import { peakVoltageOf } from '../../working/insulation/working-voltage-of.ts';
import { undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { judgeDistance, pairOutside, withBarrier } from '../judge-barrier.ts';
import { worstAnswer } from '../worst-answer.ts';

/** Is the shortest way through air between two conductors long enough, pair by pair? */
export const clearance = defineCheck({
  id: 'shock/clearance',
  consequence: 'lethal',
  needs: ['distanceAir'],
  subjects: ({ pairs }) => {
    const measured = pairs.filter(({ air }) => air.length > 0);
    return measured.length > 0 ? withBarrier(measured) : 'notLooked';
  },
  judge: ({ bench, setting }, pair) => {
    const outside = pairOutside(pair);
    if (outside !== null) return { judgement: outside };
    return worstAnswer(
      pair.air.map((reading) => {
        const degree = reading.dirty ? '3' : setting.pollutionDegree.word;
        const limits = clearanceLimits(setting, pair.id + (reading.dirty ? '/dirty' : ''), peakVoltageOf(bench, setting, pair), degree);
        return limits === null
          ? { judgement: undecided('notAssessed', 'limitUnknown') }
          : judgeDistance(pair, reading, limits, setting.decision);
      }),
    );
  },
});
