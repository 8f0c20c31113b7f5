import type { Graph } from './graph.ts';

/** A set of ways that every path from the mains to a hand goes through. */
export interface Waist {
  readonly ways: readonly string[];
  /** Sum of their strengths. */
  readonly strength: number;
}

interface Arc {
  readonly to: number;
  readonly way: string;
  room: number;
  readonly back: number;
}

/**
 * The waist of the barrier: of all sets of ways that separate the mains from every hand, the one whose strengths add up to least (minimum
 * cut; by the theorem of Ford and Fulkerson it equals the greatest flow, found here along shortest augmenting paths). Null where nothing
 * can be separated because no way leads across.
 */
export function findWaist({ nodes, ways }: Graph): Waist | null {
  const number = new Map(nodes.map(({ id }, index) => [id, index]));
  const source = nodes.length;
  const sink = nodes.length + 1;
  const arcs: Arc[][] = Array.from({ length: nodes.length + 2 }, () => []);
  const join = (a: number, b: number, way: string, there: number, back: number): void => {
    arcs[a]!.push({ to: b, way, room: there, back: arcs[b]!.length });
    arcs[b]!.push({ to: a, way, room: back, back: arcs[a]!.length - 1 });
  };
  for (const [index, { stands }] of nodes.entries()) {
    if (stands === 'mains') join(source, index, '', Number.POSITIVE_INFINITY, 0);
    if (stands === 'hand') join(index, sink, '', Number.POSITIVE_INFINITY, 0);
  }
  for (const { id, ends, strength } of ways) {
    const [a, b] = [number.get(ends[0]), number.get(ends[1])];
    if (a !== undefined && b !== undefined && a !== b) join(a, b, id, strength, strength);
  }
  let flow = 0;
  for (let path = augment(arcs, source, sink); path !== null; path = augment(arcs, source, sink)) {
    const room = Math.min(...path.map((arc) => arc.room));
    for (const arc of path) {
      arc.room -= room;
      arcs[arc.to]![arc.back]!.room += room;
    }
    flow += room;
  }
  const near = reached(arcs, source);
  const across = ways.filter(({ ends }) => {
    const [a, b] = [number.get(ends[0]), number.get(ends[1])];
    return a !== undefined && b !== undefined && near.has(a) !== near.has(b);
  });
  return across.length === 0 ? null : { ways: across.map(({ id }) => id).sort(), strength: flow };
}

function augment(arcs: readonly Arc[][], source: number, sink: number): Arc[] | null {
  const came = new Map<number, { arc: Arc; from: number }>();
  const open = [source];
  for (let at = open.shift(); at !== undefined && !came.has(sink); at = open.shift())
    for (const arc of arcs[at]!)
      if (arc.room > 0 && arc.to !== source && !came.has(arc.to)) {
        came.set(arc.to, { arc, from: at });
        open.push(arc.to);
      }
  const path: Arc[] = [];
  for (let step = came.get(sink); step !== undefined; step = came.get(step.from)) path.push(step.arc);
  return path.length === 0 ? null : path;
}

function reached(arcs: readonly Arc[][], source: number): Set<number> {
  const seen = new Set([source]);
  const open = [source];
  for (let at = open.pop(); at !== undefined; at = open.pop())
    for (const { to, room } of arcs[at]!)
      if (room > 0 && !seen.has(to)) {
        seen.add(to);
        open.push(to);
      }
  return seen;
}
