import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findFewestFailures, findPaths } from '../../src/core/working/barrier/find-paths.ts';
import { findWaist } from '../../src/core/working/barrier/find-waist.ts';
import type { Graph, Path } from '../../src/core/working/barrier/graph.ts';
import { FEW, SEED } from './seed.ts';

const NODES = 6;
const WAYS = 10;
/** Small enough to try every path and every set of ways. Strengths are quarters, so that sums are exact. */
const graphs: fc.Arbitrary<Graph> = fc
  .record({
    stands: fc.array(fc.constantFrom('mains', 'hand', 'between', 'between'), { minLength: 2, maxLength: NODES }),
    ways: fc.array(fc.tuple(fc.nat(NODES - 1), fc.nat(NODES - 1), fc.nat(10)), { maxLength: WAYS }),
  })
  .map(({ stands, ways }) => ({
    nodes: stands.map((where, index) => ({ id: `n${index}`, stands: where as 'mains' })),
    ways: ways
      .map(([a, b, quarters], index) => ({
        id: `w${index}`,
        ends: [`n${a % stands.length}`, `n${b % stands.length}`] as const,
        strength: quarters / 4,
      }))
      .filter(({ ends }) => ends[0] !== ends[1]),
  }));

/** Every simple path from a mains conductor over floating ones to the first thing a hand can touch, by walking all of them. */
function everyPath({ nodes, ways }: Graph): Path[] {
  const stands = new Map(nodes.map((node) => [node.id, node.stands]));
  const walk = (seen: readonly string[], taken: readonly Graph['ways'][number][]): Path[] => {
    const at = seen.at(-1)!;
    if (stands.get(at) === 'hand')
      return [
        {
          ways: taken.map(({ id }) => id),
          nodes: seen,
          strength: taken.reduce((sum, way) => sum + way.strength, 0),
          failures: taken.filter(({ strength }) => strength > 0).length,
        },
      ];
    return ways
      .filter(({ ends }) => ends[0] === at || ends[1] === at)
      .flatMap((way) => {
        const to = way.ends[0] === at ? way.ends[1] : way.ends[0];
        return seen.includes(to) || stands.get(to) === 'mains' ? [] : walk([...seen, to], [...taken, way]);
      });
  };
  return nodes.filter((node) => node.stands === 'mains').flatMap(({ id }) => walk([id], []));
}

/** The least sum of any set of ways without which nothing leads across, by trying every set. */
function leastSeparating(graph: Graph): number | null {
  if (everyPath(graph).length === 0) return null;
  let least = Number.POSITIVE_INFINITY;
  for (let set = 0; set < 2 ** graph.ways.length; set += 1) {
    const taken = graph.ways.filter((_, index) => (set >> index) % 2 === 1);
    const sum = taken.reduce((all, { strength }) => all + strength, 0);
    if (sum < least && everyPath({ ...graph, ways: graph.ways.filter((way) => !taken.includes(way)) }).length === 0) least = sum;
  }
  return least;
}

const run = { numRuns: FEW, seed: SEED };

describe('the weakest ways across a barrier', () => {
  it('are all the ways there are, weakest first, as walking every one of them finds', () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        const all = everyPath(graph).map(({ strength }) => strength);
        const found = findPaths(graph, all.length + 1);
        expect(found.map(({ strength }) => strength)).toEqual(all.toSorted((a, b) => a - b));
        expect(new Set(found.map(({ ways }) => ways.join())).size).toBe(found.length);
        expect(new Set(everyPath(graph).map(({ ways }) => ways.join()))).toEqual(new Set(found.map(({ ways }) => ways.join())));
      }),
      run,
    );
  });

  it('fail by the fewest pieces that walking every one of them finds', () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        const all = everyPath(graph);
        const fewest = findFewestFailures(graph);
        if (all.length === 0) expect(fewest).toBeNull();
        else {
          const least = Math.min(...all.map(({ failures }) => failures));
          expect(fewest?.failures).toBe(least);
          expect(fewest?.strength).toBe(Math.min(...all.filter(({ failures }) => failures === least).map(({ strength }) => strength)));
        }
      }),
      run,
    );
  });

  it('pass a waist whose strength is the least of any set of ways that separates, as trying every set finds', () => {
    fc.assert(
      fc.property(graphs, (graph) => {
        const waist = findWaist(graph);
        expect(waist?.strength ?? null).toBe(leastSeparating(graph));
        if (waist !== null) {
          const kept = graph.ways.filter(({ id }) => !waist.ways.includes(id));
          expect(everyPath({ ...graph, ways: kept })).toEqual([]);
          expect(graph.ways.filter(({ id }) => waist.ways.includes(id)).reduce((sum, { strength }) => sum + strength, 0)).toBe(
            waist.strength,
          );
        }
      }),
      { ...run, numRuns: 100 },
    );
  });

  it('never grow weaker when a piece grows stronger', () => {
    fc.assert(
      fc.property(graphs, fc.nat(WAYS), (graph, which) => {
        const stronger = {
          ...graph,
          ways: graph.ways.map((way, index) => (index === which ? { ...way, strength: way.strength + 1 } : way)),
        };
        const least = (one: Graph): number => findPaths(one, 1)[0]?.strength ?? Number.POSITIVE_INFINITY;
        expect(least(stronger)).toBeGreaterThanOrEqual(least(graph));
      }),
      run,
    );
  });
});
