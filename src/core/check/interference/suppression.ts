import type { Part } from '../../evidence/sample.ts';
import { cite } from '../../source/source.ts';
import { exhibitsOf } from '../../working/bench/bench.ts';
import { findRead, type Opened, openValue } from '../../working/bench/open-value.ts';
import { type LimitLine, oneOf, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

interface Board extends Subject {
  readonly boards: readonly { readonly field: string; readonly opened: Opened<string[]> }[];
}

/** What the trade fits, and how a part shows that it is one. Emission itself is a matter for a laboratory. */
const USUAL: readonly { readonly name: string; readonly is: (part: Part) => boolean }[] = [
  { name: 'choke', is: ({ kind }) => ['commonModeChoke', 'inductor'].includes(findRead(kind) ?? '') },
  { name: 'xCapacitor', is: ({ safetyClass }) => (findRead(safetyClass) ?? '').startsWith('X') },
  { name: 'yCapacitor', is: ({ safetyClass }) => (findRead(safetyClass) ?? '').startsWith('Y') },
];

const limit: LimitLine = {
  name: 'suppressionFitted',
  kind: 'oneOf',
  at: null,
  words: ['present'],
  source: cite('bench', 'a choke, an X and a Y capacitor, or some of them, keep the switching off the mains', 'common-practice'),
  grade: 'common-practice',
};

/** Are the parts that keep interference off the mains fitted? */
export const suppression = defineCheck<Board>({
  id: 'interference/suppression',
  consequence: 'informative',
  needs: ['bridgingParts'],
  subjects: ({ bench }) => {
    const noted = exhibitsOf(bench, 'board').filter((board) => openValue(board.suppression).state !== 'notLooked');
    if (noted.length > 0 && noted.every(({ struck }) => struck !== undefined)) return 'struck';
    const boards = noted
      .filter(({ struck }) => struck === undefined)
      .map((board) => ({ field: `/exhibits/${board.id}/suppression`, opened: openValue<string[]>(board.suppression) }));
    return boards.length > 0 ? [{ id: 'mains', about: 'parts that keep interference off the mains', boards }] : 'notLooked';
  },
  judge: ({ bench }, { boards }) =>
    worstAnswer(
      boards.map(({ field, opened }): Answer => {
        const emission = { key: 'emissionNotMeasured', args: {} };
        if (opened.state === 'absent')
          return {
            judgement: oneOf('absent', limit, false, [field]),
            notes: [{ key: 'because', args: { because: opened.because } }, emission],
          };
        if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
        const parts = opened.v.map((id) => bench.parts.get(id)).filter((part) => part !== undefined);
        const missing = USUAL.filter(({ is }) => !parts.some(is)).map(({ name }) => ({ key: 'suppressionWithout', args: { part: name } }));
        if (parts.length === 0) return { judgement: oneOf('absent', limit, false, [field]), notes: [emission] };
        // parts of which nobody said what they are show nothing
        if (missing.length === USUAL.length)
          return { judgement: undecided('inconclusive', 'unknownValue', { limit, fields: [field] }), notes: [emission] };
        return { judgement: oneOf('present', limit, true, [field]), notes: [...missing, emission] };
      }),
    ),
});
