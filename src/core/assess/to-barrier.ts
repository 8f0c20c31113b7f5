import type { BarrierMap } from '../result/barrier-map.ts';
import type { BarrierFacts } from '../working/barrier/barrier-facts.ts';
import type { Path } from '../working/barrier/graph.ts';
import type { BarrierWay } from '../working/barrier/strength.ts';
import { type Bench, nameOf } from '../working/bench/bench.ts';
import { findRead } from '../working/bench/open-value.ts';

/** The barrier map of an Assessment; undefined where no way across was recorded. */
export function toBarrier(facts: BarrierFacts, bench: Bench): BarrierMap | undefined {
  if (facts.ways.length === 0) return undefined;
  const path = ({ ways, nodes, strength, failures }: Path): Exclude<BarrierMap['fewest'], null> => {
    return { ways: [...ways], nodes: [...nodes], strength, failures };
  };
  const used = new Set(facts.ways.flatMap(({ ends }) => ends));
  return {
    nodes: facts.nodes.filter(({ id }) => used.has(id)).map(({ id, name, stands }) => ({ id, name, stands })),
    ways: facts.ways.map(toWay),
    weakest: facts.weakest.map(path),
    atBest: facts.atBest === null ? null : path(facts.atBest),
    fewest: facts.fewest === null ? null : path(facts.fewest),
    waist: facts.waist === null ? null : { ways: [...facts.waist.ways], strength: facts.waist.strength },
    ...(facts.earth.length === 0 ? {} : { earth: toEarth(facts.earth, bench) }),
    missing: [...facts.missing],
    open: [...facts.open],
  };
}

function toWay({ id, ends, kind, about, strength: { low, high, notLooked, fields } }: BarrierWay): BarrierMap['ways'][number] {
  return { id, ends: [ends[0], ends[1]], kind, about, low, high, notLooked, fields: [...fields] };
}

const STANDS = { mains: 'mains', output: 'hand', touchable: 'hand', floating: 'between', earth: 'earth' } as const;

/** Earth with what stands beside it. */
function toEarth(ways: readonly BarrierWay[], bench: Bench): NonNullable<BarrierMap['earth']> {
  const ends = [...new Set(ways.flatMap((way) => way.ends))];
  return {
    nodes: ends.flatMap((id) => {
      const side = findRead(bench.conductors.get(id)?.side);
      return side === null ? [] : [{ id, name: nameOf(bench, id), stands: STANDS[side] }];
    }),
    ways: ways.map(toWay),
  };
}
