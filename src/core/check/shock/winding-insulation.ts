import type { BarrierWay } from '../../working/barrier/strength.ts';
import { facesOf } from '../../working/barrier/winding-place.ts';
import type { Facts } from '../../working/facts.ts';
import { defineCheck, type Subject } from '../define-check.ts';
import { judgeWays } from '../judge-way.ts';

interface Between extends Subject {
  readonly ways: readonly BarrierWay[];
}

const KINDS: readonly BarrierWay['kind'][] = ['through', 'edge', 'lead'];

/** Which insulation does each pair of windings on two sides of the barrier really have: through the layers, round their edges, at the lead-outs and over the core? */
export const windingInsulation = defineCheck<Between>({
  id: 'shock/winding-insulation',
  consequence: 'lethal',
  needs: ['stack'],
  subjects: (facts) => {
    const between = betweenWindings(facts);
    return between.length > 0 ? between : 'notLooked';
  },
  judge: ({ setting }, { id, ways }) => {
    const sum = ways.reduce((all, { strength }) => ({ low: all.low + strength.low, high: all.high + strength.high }), { low: 0, high: 0 });
    return judgeWays(ways, `barrier/winding/${id}`, sum, setting.decision);
  },
});

function betweenWindings({ stacks, barrier }: Facts): Between[] {
  return stacks.flatMap((stack) => {
    const of = (side: 'mains' | 'hand') => stack.windings.filter((winding) => facesOf(winding) === side);
    return of('mains').flatMap((mains) =>
      of('hand').flatMap((hand): Between[] => {
        const ends = [`${stack.part.id}/${mains.id}`, `${stack.part.id}/${hand.id}`];
        const direct = barrier.ways
          .filter((way) => KINDS.includes(way.kind) && ends.every((end) => way.ends.includes(end)))
          .map((way): Between => ({ id: way.id, about: way.about, ways: [way] }));
        const legs = [mains, hand].map(({ id }) => barrier.ways.find((way) => way.id === `core:${stack.part.id}:${id}`));
        const overCore = legs.every((leg) => leg !== undefined)
          ? [
              {
                id: `core:${stack.part.id}:${mains.id}~${hand.id}`,
                about: `${stack.part.ref}: ${mains.name} to ${hand.name} over the core`,
                ways: legs,
              },
            ]
          : [];
        return [...direct, ...overCore];
      }),
    );
  });
}
