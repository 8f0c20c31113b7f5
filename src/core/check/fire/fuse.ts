import { cite } from '../../source/source.ts';
import { breakingCapacity } from '../../table/iec-60127/undated/breaking-capacity.ts';
import { getCell } from '../../table/look-up.ts';
import type { StepNode } from '../../trace/step.ts';
import { exhibitsOf } from '../../working/bench/bench.ts';
import { type Opened, openValue } from '../../working/bench/open-value.ts';
import { fuseGates } from '../../working/board/fuse-gates.ts';
import { type LimitLine, oneOf } from '../decide.ts';
import { defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

interface FirstPart extends Subject {
  readonly boards: readonly { readonly field: string; readonly opened: Opened<string>; readonly part: string | undefined }[];
}

const PROTECTS = ['cartridge', 'wire', 'fusibleResistor'];

const MADE_AS_FUSES = ['cartridge', 'wire'];

/** The first part behind the plug must be made to open: a printed track or a plain resistor is no fuse, and neither is nothing. */
const limit: LimitLine = {
  name: 'realFuse',
  kind: 'oneOf',
  at: null,
  words: PROTECTS,
  source: cite('iec-60127', 'a fuse is a part made and tested to break; a track or a plain resistor is none', 'memory'),
  grade: 'memory',
};

/** What opens when the mains side fails: a fuse, a fusible resistor, a track, or nothing? */
export const fuse = defineCheck<FirstPart>({
  id: 'fire/fuse',
  consequence: 'injurious',
  needs: ['firstPart'],
  subjects: ({ bench }) => {
    const noted = exhibitsOf(bench, 'board').filter((board) => openValue(board.fuse).state !== 'notLooked');
    if (noted.length > 0 && noted.every(({ struck }) => struck !== undefined)) return 'struck';
    const boards = noted
      .filter(({ struck }) => struck === undefined)
      .map((board) => ({ field: `/exhibits/${board.id}/fuse`, opened: openValue<string>(board.fuse), part: board.fusePart }));
    return boards.length > 0 ? [{ id: 'mains', about: 'the first part behind the plug', boards }] : 'notLooked';
  },
  judge: ({ bench }, { boards }) =>
    worstAnswer(
      boards.map(({ field, opened, part }) => {
        if (opened.state === 'absent')
          return { judgement: oneOf('noFuse', limit, false, [field]), notes: [{ key: 'because', args: { because: opened.because } }] };
        if (opened.state !== 'read') return { judgement: judgeState(opened, field) };
        const breaks = MADE_AS_FUSES.includes(opened.v) ? breaking() : null;
        const gates = breaks === null ? null : fuseGates(bench, part);
        const notes = [
          ...(breaks === null ? [] : [{ key: 'breakingByLetter', args: breaks.args }]),
          ...(gates?.notes ?? []),
          { key: 'breakingNotJudged', args: {} },
        ];
        return {
          judgement: oneOf(opened.v, limit, PROTECTS.includes(opened.v), [field]),
          ...(breaks === null ? {} : { beside: [...breaks.steps, ...(gates?.steps ?? [])] }),
          notes,
        };
      }),
    ),
});

/** What fuses break, by the letter on their cap: glass ones are mostly L. */
function breaking(): { args: Record<string, number>; steps: StepNode[] } {
  const cells = { low: 'L', enhanced: 'E', high: 'H' } as const;
  const found = Object.entries(cells).map(([name, letter]) => ({
    name,
    cell: getCell(breakingCapacity, letter, 'breaks', `board/breaking-capacity/${letter}`, 'I_b'),
  }));
  return { args: Object.fromEntries(found.map(({ name, cell }) => [name, cell.value])), steps: found.map(({ cell }) => cell.step) };
}
