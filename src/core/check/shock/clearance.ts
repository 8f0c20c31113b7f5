import { clearanceLimits, type DistanceLimits } from '../../working/insulation/clearance-limits.ts';
import { fastPeakOf, peakVoltageOf } from '../../working/insulation/working-voltage-of.ts';
import { undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
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
        const limits = clearanceLimits(
          setting,
          pair.id + (reading.dirty ? '/dirty' : ''),
          peakVoltageOf(bench, setting, pair),
          degree,
          fastPeakOf(bench, setting, pair),
        );
        if (limits === null) return { judgement: undecided('notAssessed', 'limitUnknown') };
        return withTestInstead(judgeDistance(pair, reading, limits, setting.decision), limits);
      }),
    );
  },
});

/** A gap that is too short may still be proved by impulses in a laboratory: said, never counted. */
function withTestInstead(answer: Answer, { test }: DistanceLimits): Answer {
  if (answer.judgement.outcome !== 'fail' || answer.rung === 'bridgedOrAbsent') return answer;
  const volts = answer.rung === 'basicNotReinforced' ? test?.reinforced : test?.basic;
  if (volts === null || volts === undefined) return answer;
  return {
    ...answer,
    notes: [...(answer.notes ?? []), { key: 'impulseTestInstead', args: { volts: volts.value } }],
    beside: [...(answer.beside ?? []), volts.step],
  };
}
