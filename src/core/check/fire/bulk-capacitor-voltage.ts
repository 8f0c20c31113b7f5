import { halfOfCrest } from '../../formula/board/half-of-crest.ts';
import { derive } from '../../formula/derive.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { cite } from '../../source/source.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Note, StepNode } from '../../trace/step.ts';
import { type BulkCapacitor, bulkFacts } from '../../working/board/bulk-facts.ts';
import { type HoldUp, holdUpAtEachMains } from '../../working/board/hold-up-facts.ts';
import { type UsualBulk, usualBulk } from '../../working/board/usual-bulk.ts';
import { bulkValleys } from '../../working/board/valley-facts.ts';
import { atLeast, type LimitLine, undecided } from '../decide.ts';
import { defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';

interface Bulk extends Subject {
  readonly capacitor: BulkCapacitor;
  /** Valley and hold-up belong to all of them together and are shown once. */
  readonly first: boolean;
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
    return typeof bulk === 'string'
      ? bulk
      : bulk.map((capacitor, index) => ({ id: capacitor.part.id, about: capacitor.part.ref, capacitor, first: index === 0 }));
  },
  judge: ({ bench, levels, setting }, { capacitor: { rating, share }, first }) => {
    if (rating.at === null) return { judgement: judgeState(rating.opened, rating.field) };
    const beside = first ? besideIt(usualBulk(bench, setting, levels), holdUpAtEachMains(bulkValleys(bench, levels))) : {};
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

/** What the capacitor does between two charges and after the last one, at each mains voltage, and what makers take: numbers without a limit. */
function besideIt(usual: UsualBulk | null, all: readonly HoldUp[]): { beside: StepNode[]; notes: Note[] } {
  const fall = fallAndHoldUp(all);
  if (usual === null) return fall;
  const { found, power, least, most } = usual;
  const args = { found: found.value, power: power.value, least: least.value, most: most.value };
  return { beside: [least.step, most.step, ...fall.beside], notes: [{ key: 'usualBulk', args }, ...fall.notes] };
}

function fallAndHoldUp(all: readonly HoldUp[]): { beside: StepNode[]; notes: Note[] } {
  return {
    beside: all.flatMap(({ at, least, most }) => [at.conduction.step, ...(least === null ? [] : [least.step]), most.step]),
    notes: all.flatMap(({ at, least, most }): Note[] => {
      const under = { mains: at.mains.value, power: at.power.value };
      return [
        { key: at.ofEach ? 'valleyOfEach' : 'bulkValley', args: { ...under, valley: at.valley.value } },
        least === null
          ? { key: 'holdUpAtMost', args: { ...under, most: most.value } }
          : { key: 'holdUpBetween', args: { ...under, least: least.value, most: most.value } },
      ];
    }),
  };
}
