import type { BarrierWay } from '../../working/barrier/strength.ts';
import { facesOf, nodeOf } from '../../working/barrier/winding-place.ts';
import type { Facts } from '../../working/facts.ts';
import type { StackFacts } from '../../working/transformer/stack-facts.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeWays } from '../judge-way.ts';
import { worstAnswer } from '../worst-answer.ts';

interface Between extends Subject {
  /** Ways that stand beside each other, each of one piece or of several in a row. */
  readonly rows: readonly (readonly BarrierWay[])[];
}

const KINDS: readonly BarrierWay['kind'][] = ['through', 'edge', 'lead'];

/** Which insulation does each pair of windings on two sides of the barrier really have: through the layers, round their edges, at the lead-outs and over the core? */
export const windingInsulation = defineCheck<Between>({
  id: 'shock/winding-insulation',
  consequence: 'lethal',
  needs: ['stack'],
  subjects: (facts) => {
    const between = facts.stacks.flatMap((stack) => [...pairsOf(stack, facts), ...overCore(stack, facts)]);
    return between.length > 0 ? between : 'notLooked';
  },
  judge: ({ setting }, { rows }) => {
    const answers = rows.map((ways): Answer => {
      const sum = ways.reduce((all, { strength }) => ({ low: all.low + strength.low, high: all.high + strength.high }), {
        low: 0,
        high: 0,
      });
      const answer = judgeWays(ways, `barrier/winding/${ways.map(({ id }) => id).join('+')}`, sum, setting.decision);
      return { ...answer, notes: [{ key: 'decidedByWay', args: { way: ways[0]!.kind } }, ...(answer.notes ?? [])] };
    });
    // what nobody looked at stands beside a way that holds and hides nothing behind one that fails
    const open = answers.find(({ judgement }) => judgement.outcome === 'notAssessed');
    const worst = worstAnswer(answers, 'severalThings');
    return worst.judgement.outcome === 'pass' && open !== undefined ? open : worst;
  },
});

/** Each pair across, with every way there is between them. */
function pairsOf(stack: StackFacts, { barrier }: Facts): Between[] {
  const of = (side: 'mains' | 'hand') => stack.windings.filter((winding) => facesOf(winding) === side);
  return of('mains').flatMap((mains) =>
    of('hand').flatMap((hand): Between[] => {
      const ends = [nodeOf(stack, mains), nodeOf(stack, hand)];
      const rows = barrier.ways
        .filter((way) => KINDS.includes(way.kind) && ends.every((end) => way.ends.includes(end)))
        .map((way) => [way]);
      return rows.length === 0
        ? []
        : [{ id: `${stack.part.id}:${mains.id}~${hand.id}`, about: `${stack.part.ref}: ${mains.name} to ${hand.name}`, rows }];
    }),
  );
}

/** The core joins the shortest way to it from either side. */
function overCore(stack: StackFacts, { barrier }: Facts): Between[] {
  const leg = (side: 'mains' | 'hand'): BarrierWay | undefined =>
    stack.windings
      .filter((winding) => facesOf(winding) === side)
      .flatMap(({ id }) => barrier.ways.find((way) => way.id === `core:${stack.part.id}:${id}`) ?? [])
      .toSorted((a, b) => a.strength.high - b.strength.high || a.strength.low - b.strength.low)[0];
  const [from, to] = [leg('mains'), leg('hand')];
  return from === undefined || to === undefined
    ? []
    : [{ id: `${stack.part.id}:core`, about: `${stack.part.ref}: windings over the core`, rows: [[from, to]] }];
}
