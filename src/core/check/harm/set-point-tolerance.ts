import { outputLimits } from '../../working/circuit/output-limits.ts';
import type { LevelFacts } from '../../working/load/sweep-facts.ts';
import { atMost, limitLine, undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';
import { setPointFor } from '../judge-set-points.ts';

/** With every feedback part at the edge of its tolerance, does the output still stay below what a device must stand? It speaks for other samples too. */
export const setPointTolerance = defineCheck<LevelFacts>({
  id: 'harm/set-point-tolerance',
  consequence: 'damaging',
  needs: ['circuit'],
  subjects: ({ circuit, levels }) => (circuit === null || levels.length === 0 ? 'notLooked' : levels),
  judge: (facts, level) => {
    const found = setPointFor(facts, level);
    if ('judgement' in found) return { judgement: found.judgement };
    const limits = outputLimits(found.point);
    if (limits === null)
      return {
        judgement: undecided('notAssessed', 'limitUnknown', { measured: found.point.value, notes: [{ key: 'noTolerances', args: {} }] }),
      };
    const { drawn, least, most } = limits;
    const notes = [
      { key: 'edgesOfTolerance', args: { least: least.value, most: most.value } },
      { key: 'drawnOutputs', args: { draws: drawn.draws, low: drawn.low, high: drawn.high, least: drawn.least, most: drawn.most } },
    ];
    const harmful = level.window?.harmful ?? null;
    const beside = [least.step, limits.spread.step];
    if (harmful === null) return { judgement: undecided('notAssessed', 'limitUnknown', { measured: most, notes }), beside };
    return { judgement: { ...atMost(most, limitLine('deviceStands', 'atMost', harmful), facts.setting.decision), notes }, beside };
  },
});
