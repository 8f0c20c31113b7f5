/** The barrier map of a mesh: weakest paths, fewest failures and waist of 60 conductors and 300 ways, beside a deep copy of the same mesh. */
import { findFewestFailures, findPaths } from '../src/core/working/barrier/find-paths.ts';
import { findWaist } from '../src/core/working/barrier/find-waist.ts';
import type { Graph } from '../src/core/working/barrier/graph.ts';
import { line, measure } from './measure.ts';

const NODES = 60;
const WAYS = 300;
const PATHS = 12;
const ROUNDS = 101;
let seed = 20_261_125;
const next = (below: number): number => {
  seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648; // a linear congruence: the same mesh each time
  return seed % below;
};
const graph: Graph = {
  nodes: Array.from({ length: NODES }, (_, index) => ({ id: `n${index}`, stands: index < 8 ? 'mains' : index < 14 ? 'hand' : 'between' })),
  ways: Array.from({ length: WAYS }, (_, index) => {
    const from = next(NODES);
    return { id: `w${index}`, ends: [`n${from}`, `n${(from + 1 + next(NODES - 1)) % NODES}`] as const, strength: next(9) / 4 };
  }),
};
const copy = measure(() => structuredClone(graph), ROUNDS);
console.log(line('deep copy of the mesh (reference)', copy));
const reference = { name: 'a deep copy', median: copy.median };
console.log(
  line(
    'twelve weakest paths',
    measure(() => findPaths(graph, PATHS), ROUNDS),
    reference,
  ),
);
console.log(
  line(
    'paths, failures and waist, target under 20 ms',
    measure(() => [findPaths(graph, PATHS), findFewestFailures(graph), findWaist(graph)], ROUNDS),
    reference,
  ),
);
