import { halfOfCrest } from '../../formula/board/half-of-crest.ts';
import { derive } from '../../formula/derive.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { cite } from '../../source/source.ts';
import type { Derived } from '../../trace/derived.ts';
import { type BulkCapacitor, bulkFacts } from '../../working/board/bulk-facts.ts';
import { bulkValleyFacts } from '../../working/board/valley-facts.ts';
import { atLeast, type LimitLine, undecided } from '../decide.ts';
import { defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';

interface Bulk extends Subject {
  readonly capacitor: BulkCapacitor;
}

const line = (name: string, at: Derived): LimitLine => ({
  name,
  kind: 'atLeast',
  at,
  source: cite('circuit-theory', 'a rectifier charges its capacitor to the crest of the mains', 'reasoned'),
  grade: 'reasoned',
});

/** Is the bulk capacitor rated for the crest of the highest mains? */
export const bulkCapacitorVoltage = defineCheck<Bulk>({
  id: 'fire/bulk-capacitor-voltage',
  consequence: 'injurious',
  needs: ['bulkCapacitor'],
  subjects: ({ bench }) => {
    const bulk = bulkFacts(bench);
    return typeof bulk === 'string' ? bulk : bulk.map((capacitor) => ({ id: capacitor.part.id, about: capacitor.part.ref, capacitor }));
  },
  judge: ({ bench, levels, setting }, { capacitor: { rating, share } }) => {
    if (rating.at === null) return { judgement: judgeState(rating.opened, rating.field) };
    const fall = bulkValleyFacts(bench, levels);
    const beside =
      fall === null
        ? {}
        : {
            beside: [fall.conduction.step],
            notes: [
              {
                key: fall.ofEach ? 'valleyOfEach' : 'bulkValley',
                args: { valley: fall.valley.value, mains: fall.mains.value, power: fall.power.value },
              },
            ],
          };
    const crest = derive(peakOfMains, { rms: setting.high }, 'board/crest-of-highest-mains');
    const whole = atLeast(rating.at, line('crestOfMains', crest), setting.decision);
    if (share === 'whole' || whole.outcome === 'pass') return { judgement: whole, ...beside };
    const half = line('halfOfCrest', derive(halfOfCrest, { crest }, 'board/half-of-crest'));
    const shared = atLeast(rating.at, half, setting.decision);
    const others = [line('crestOfMains', crest)];
    if (shared.outcome === 'fail') return { judgement: { ...shared, others }, ...beside };
    return {
      judgement: undecided('inconclusive', 'unknownValue', {
        measured: rating.at,
        limit: line('crestOfMains', crest),
        others: [half],
        margin: whole.margin,
        fields: [rating.field],
        notes: [{ key: 'seriesOrDoubler', args: {} }],
      }),
      ...beside,
    };
  },
});
