import type { Graph } from './graph.ts';
import type { Family, Link } from './links.ts';
import { otherEnd } from './rail.ts';

/** The shortest row of links of these families from one set of nets to another, never over a net of `avoid`; null when there is none within `most` links. */
export function findPath(
  graph: Graph,
  from: Iterable<string>,
  to: ReadonlySet<string>,
  families: readonly Family[],
  most: number,
  avoid: ReadonlySet<string> = new Set(),
): readonly Link[] | null {
  let front: { net: string; path: readonly Link[] }[] = [...from].map((net) => ({ net, path: [] }));
  const seen = new Set(front.map(({ net }) => net));
  for (let hop = 0; hop < most; hop += 1) {
    const next: typeof front = [];
    for (const { net, path } of front)
      for (const link of graph.links) {
        const end = families.includes(link.family) ? otherEnd(link, net) : null;
        if (end === null) continue;
        if (to.has(end)) return [...path, link];
        if (seen.has(end) || avoid.has(end)) continue;
        seen.add(end);
        next.push({ net: end, path: [...path, link] });
      }
    front = next;
  }
  return null;
}
