import type { BarrierMap } from '../result/barrier-map.ts';
import type { BarrierFacts } from '../working/barrier/barrier-facts.ts';
import type { Path } from '../working/barrier/graph.ts';

/** The barrier map of an Assessment; undefined where no way across was recorded. */
export function toBarrier(facts: BarrierFacts): BarrierMap | undefined {
  if (facts.ways.length === 0) return undefined;
  const path = ({ ways, nodes, strength, failures }: Path): Exclude<BarrierMap['fewest'], null> => {
    return { ways: [...ways], nodes: [...nodes], strength, failures };
  };
  const used = new Set(facts.ways.flatMap(({ ends }) => ends));
  return {
    nodes: facts.nodes.filter(({ id }) => used.has(id)).map(({ id, name, stands }) => ({ id, name, stands })),
    ways: facts.ways.map(({ id, ends, kind, about, strength: { low, high, notLooked, fields } }) => {
      return { id, ends: [ends[0], ends[1]], kind, about, low, high, notLooked, fields: [...fields] };
    }),
    weakest: facts.weakest.map(path),
    atBest: facts.atBest === null ? null : path(facts.atBest),
    fewest: facts.fewest === null ? null : path(facts.fewest),
    waist: facts.waist === null ? null : { ways: [...facts.waist.ways], strength: facts.waist.strength },
    missing: [...facts.missing],
    open: [...facts.open],
  };
}
