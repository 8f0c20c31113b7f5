import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../src/core/result/assessment.ts';
import { toBarrierView } from '../../src/present/workspace/barrier-view.ts';
import { toChapterViews } from '../../src/present/workspace/chapter-view.ts';
import { type FormNode, toForm } from '../../src/present/workspace/form.ts';
import { toTransformerViews } from '../../src/present/workspace/transformer-view.ts';
import { toWorkspaceView } from '../../src/present/workspace/workspace-view.ts';
import { caseOf, mm, SOUND, stackOf, tape, winding } from '../truth/barrier/hand-solved.ts';
import { judge } from '../truth/build-case.ts';
import { electrical } from '../truth/transformer/electrical-case.ts';

const judged = (stack: typeof SOUND): Assessment => judge(caseOf({ title: '', outcome: 'pass', stack }));
const transformerOf = (assessment: Assessment) => toChapterViews(assessment).find(({ id }) => id === 'transformer')!;

/** The node of the form at a place of the case; undefined where the form has none. Ids of items are passed over. */
function nodeAt(form: FormNode, place: string): FormNode | undefined {
  let here: FormNode | undefined = form;
  for (const key of place.split('/').slice(1)) {
    while (here?.is === 'value') here = here.of;
    if (here?.is === 'list') here = here.of;
    else if (here?.is === 'object') here = here.members.find((member) => member.key === key)?.node;
    else if (here?.is === 'variants')
      here = Object.values(here.of)
        .flatMap((one) => (one.is === 'object' ? one.members : []))
        .find((member) => member.key === key)?.node;
    else return undefined;
  }
  return here;
}

describe('the transformer beside its entry', () => {
  it('is drawn anew when a turn is added, though no finding moves', () => {
    const turns = (count: string): Assessment =>
      judged(stackOf([winding('s', 'output', { turns: count }), tape('tape', '3'), winding('p', 'mains')]));
    const before = turns('10');
    const view = toWorkspaceView(before);
    const after = toWorkspaceView(turns('11'), { assessment: before, view });
    const circles = (one: typeof view): number =>
      one.chapters.find(({ id }) => id === 'transformer')!.transformers[0]!.wideSvg.split('class="turn hand"').length - 1;
    expect([circles(view), circles(after)]).toEqual([10, 11]);
    expect(after.rows).toEqual(view.rows);
  });

  it('says of every gap where it is entered, and that place can be entered', () => {
    const bare = electrical({
      stack: {
        law: undefined,
        inductance: undefined,
        peakCurrent: undefined,
        frequency: undefined,
        meanTurn: undefined,
        clamp: undefined,
        leakage: undefined,
      },
    });
    const [view] = toTransformerViews(judge(bare));
    const gaps = view!.blocked.flatMap(({ missing }) => missing);
    expect(gaps.length).toBeGreaterThan(5);
    const form = toForm();
    for (const { words, place } of gaps) if (place !== null) expect(nodeAt(form, place), `${words} at ${place}`).toBeDefined();
    for (const named of ['how the switch is driven', 'the air gap', 'the voltage of the clamp'])
      expect(gaps.find(({ words }) => words === named)?.place, named).toBeTruthy();
  });

  it('names the weakest place with both its layers, and leads to their findings', () => {
    const assessment = judged(
      stackOf([winding('s', 'output', { margins: [mm(1), mm(1)] }), tape('tape', '3'), winding('p', 'mains', { margins: [mm(1), mm(1)] })]),
    );
    const { weakest, pairs } = transformerOf(assessment).transformers[0]!;
    expect(weakest).toMatchObject({ where: 'round the edge of the tape', outcome: 'fail' });
    expect(weakest?.layers.map(({ id }) => id).toSorted()).toEqual(['p', 's']);
    expect(pairs).toContain(weakest?.finding);
  });
});

describe('the barrier in sentences', () => {
  it('names the weakest path, the failures it takes and the waist, each piece with what it stands on', () => {
    const { lines } = toBarrierView(judged(SOUND))!;
    expect(lines.map(({ title }) => title)).toEqual(['Weakest path', 'Fewest failures', 'Every path goes through']);
    const [weakest, fewest] = lines;
    expect(weakest!.words).toMatch(/: double or reinforced$/);
    expect(fewest!.words).toMatch(/^(one piece|2 pieces) on /);
    for (const { pieces } of lines) expect(pieces.some(({ place }) => place !== null)).toBe(true);
  });

  it('a lead-out that crosses bare needs no failure at all', () => {
    const bare = stackOf([
      winding('s', 'output', { leads: [{ id: 'start', crosses: ['p'], sleeved: false }] }),
      tape('tape', '3'),
      winding('p', 'mains'),
    ]);
    const { lines } = toBarrierView(judged(bare))!;
    expect(lines.find(({ title }) => title === 'Fewest failures')?.words).toMatch(/^none is needed: /);
  });

  it('is silent where nobody recorded a way', () => expect(toBarrierView(judge())).toBeNull());
});
