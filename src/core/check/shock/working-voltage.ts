import { cite } from '../../source/source.ts';
import { exhibitsOf, nameOf } from '../../working/bench/bench.ts';
import { findRead } from '../../working/bench/open-value.ts';
import type { PairFacts } from '../../working/insulation/pair-facts.ts';
import { estimateOf, peakVoltageOf, workingVoltageOf } from '../../working/insulation/working-voltage-of.ts';
import { atMost, type LimitLine, undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';

/** Which voltage does the insulation really see, and is it what is assumed where nobody measured? */
export const workingVoltage = defineCheck<PairFacts>({
  id: 'shock/working-voltage',
  consequence: 'informative',
  needs: ['workingVoltage'],
  subjects: ({ bench }) => {
    const side = (id: string): string | null => findRead(bench.conductors.get(id)?.side);
    const pairs = new Map<string, PairFacts>();
    for (const { between, struck } of exhibitsOf(bench, 'workingVoltage')) {
      const [a, b] = side(between[0]) === 'mains' ? between : [between[1], between[0]];
      if (struck !== undefined || side(a) !== 'mains' || side(b) === 'mains') continue;
      const id = `${a}~${b}`;
      const about = `${nameOf(bench, a)} to ${nameOf(bench, b)}`;
      pairs.set(id, { id, about, ends: [a, b], insulation: 'reinforced', betweenMains: false, surface: [], air: [] });
    }
    return pairs.size > 0 ? [...pairs.values()].sort((a, b) => (a.id < b.id ? -1 : 1)) : 'notLooked';
  },
  judge: ({ bench, setting }, pair) => {
    const working = workingVoltageOf(bench, setting, pair);
    if (!working.measured) return { judgement: undecided('notAssessed', 'refusedEvidence') };
    const peak = peakVoltageOf(bench, setting, pair);
    const limit: LimitLine = {
      name: 'workingVoltageAssumed',
      kind: 'atMost',
      at: estimateOf(setting),
      source: cite('house', 'working voltage over mains, 1.10 to 1.20', 'memory'),
      grade: 'memory',
    };
    const notes = peak === null ? [{ key: 'workingPeakMissing', args: {} }] : [{ key: 'workingPeak', args: { peak: peak.value } }];
    return { judgement: atMost(working.rms, limit, setting.decision), ...(peak === null ? {} : { beside: [peak.step] }), notes };
  },
});
