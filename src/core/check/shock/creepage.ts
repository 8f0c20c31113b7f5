import { tracking } from '../../table/laminate-makers/2026/tracking.ts';
import { findCell } from '../../table/look-up.ts';
import type { Note } from '../../trace/step.ts';
import { findRead } from '../../working/bench/open-value.ts';
import { clearanceLimits } from '../../working/insulation/clearance-limits.ts';
import { coatedLines } from '../../working/insulation/coated-lines.ts';
import { creepageLimits } from '../../working/insulation/creepage-limits.ts';
import { fastPeakOf, peakVoltageOf, workingVoltageOf } from '../../working/insulation/working-voltage-of.ts';
import { undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { pairOutside, withBarrier } from '../judge-barrier.ts';
import { judgePastSlot } from '../judge-past-slot.ts';
import { surfaceNotes } from '../surface-notes.ts';
import { worstAnswer } from '../worst-answer.ts';

/** Is the shortest way along a surface between two conductors long enough, at the working voltage of that pair? */
export const creepage = defineCheck({
  id: 'shock/creepage',
  consequence: 'lethal',
  needs: ['distanceSurface'],
  subjects: ({ pairs }) => {
    const measured = pairs.filter(({ surface }) => surface.length > 0);
    return measured.length > 0 ? withBarrier(measured) : 'notLooked';
  },
  judge: ({ bench, setting }, pair) => {
    const outside = pairOutside(pair);
    if (outside !== null) return { judgement: outside };
    const working = workingVoltageOf(bench, setting, pair);
    const notes = working.measured ? [] : [{ key: 'workingVoltageEstimated', args: {} }];
    const answer = worstAnswer(
      pair.surface.map((reading) => {
        const { group } = reading;
        if (group === null)
          return {
            judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'tracksTooEasily', args: {} }], fields: [reading.field] }),
          };
        const degree = reading.dirty ? '3' : setting.pollutionDegree.word;
        const key = `${pair.id}${group === 'III' ? '' : `/group-${group.toLowerCase()}`}${reading.dirty ? '/dirty' : ''}`;
        const peak = peakVoltageOf(bench, setting, pair);
        const clearance = clearanceLimits(setting, key, peak, degree, fastPeakOf(bench, setting, pair));
        const limits = clearance === null ? null : creepageLimits(key, working.rms, group, degree, clearance);
        if (limits === null || clearance === null) return { judgement: undecided('notAssessed', 'limitUnknown') };
        const creepage = {
          ...limits,
          others: [...limits.others, ...coatedLines(reading, peak, pair.insulation === 'basic', `insulation/${key}`)],
        };
        const judged = judgePastSlot(pair, reading, { key, degree, creepage, clearance }, setting.decision);
        const assumed = reading.groupKnown ? [] : [assumedMaterial(findRead(reading.exhibit.material), group)];
        return { ...judged, notes: [...(judged.notes ?? []), ...assumed, ...surfaceNotes(reading)] };
      }),
    );
    return { ...answer, notes: [...(answer.notes ?? []), ...(pair.insulation === 'reinforced' ? notes : [])] };
  },
});

/** What the group rests on where nobody read a tracking index: what its laminate is sold with, or nothing. */
function assumedMaterial(laminate: string | null, group: string): Note {
  const least = laminate === null ? null : findCell(tracking, laminate, 'least', 'insulation/laminate', 'CTI');
  if (laminate === null || least === null) return { key: 'materialAssumed', args: { group } };
  return { key: 'materialByKind', args: { laminate, least: least.value, group } };
}
