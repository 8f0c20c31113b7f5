import type { Part } from '../../evidence/sample.ts';
import { shareOfMarked } from '../../formula/board/share-of-marked.ts';
import { derive } from '../../formula/derive.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { cite } from '../../source/source.ts';
import { given } from '../../trace/derived.ts';
import { deriveTyped } from '../../working/bench/derive-reading.ts';
import { findRead, openValue } from '../../working/bench/open-value.ts';
import { measuredValue } from '../../working/board/part-quantity.ts';
import { atLeast, limitLine } from '../decide.ts';
import { defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';

interface Marked extends Subject {
  readonly part: Part;
}

/** Capacitors whose value wears or is cheated on; ceramic ones lose capacitance by voltage and temperature and tell nothing out of circuit. */
const KINDS = new Set(['electrolyticCapacitor', 'filmCapacitor']);
const LEAST_SHARE = 0.8;

/** Have the capacitors the value that is printed on them? */
export const capacitorValue = defineCheck<Marked>({
  id: 'endurance/capacitor-value',
  consequence: 'disappointing',
  needs: ['capacitorValues'],
  subjects: ({ bench }) => {
    const parts = bench.one.parts.filter(
      (part) =>
        KINDS.has(findRead(part.kind) ?? '') &&
        (openValue(part.value).state !== 'notLooked' || openValue(part.measured).state !== 'notLooked'),
    );
    return parts.length > 0 ? parts.map((part) => ({ id: part.id, about: part.ref, part })) : 'notLooked';
  },
  judge: ({ bench, setting }, { part }) => {
    const field = `/parts/${part.id}/value`;
    const marked = openValue<string>(part.value);
    const quantity = marked.state === 'read' ? parseQuantity(marked.v, 'capacitance') : null;
    if (marked.state !== 'read' || quantity === null || isRefusal(quantity) || quantity.value <= 0)
      return { judgement: judgeState(marked, field) };
    const measured = measuredValue(bench, part, 'capacitance', 'capacitance', 'C');
    if (measured.at === null) return { judgement: judgeState(measured.opened, measured.field) };
    const share = derive(
      shareOfMarked,
      { measured: measured.at, marked: deriveTyped(marked.v, 'capacitance', field, 'markedValue', 'C_0') },
      `board/${part.id}/share-of-marked`,
    );
    const source = cite(
      'bench',
      'an electrolytic capacitor below 80 % of its marking is worn or was never what it says',
      'common-practice',
    );
    const least = given('constant', LEAST_SHARE, '1', { id: 'board/least-share-of-marked', name: 'least-share', symbol: 's_0', source });
    return { judgement: atLeast(share, limitLine('leastShare', 'atLeast', least), setting.decision), show: 'percent' };
  },
});
