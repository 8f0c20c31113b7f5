import type { Link } from './links.ts';

/** Nets that fuses, limiters, chokes and links join to one rail, from the net given. `extra` adds families for a special case. */
export function railFrom(
  start: Iterable<string>,
  links: readonly Link[],
  joins: (link: Link, from: string, to: string) => boolean,
): Set<string> {
  const rail = new Set(start);
  const front = [...rail];
  for (let net = front.pop(); net !== undefined; net = front.pop()) {
    for (const link of links) {
      const to = otherEnd(link, net);
      if (to === null || rail.has(to) || !joins(link, net, to)) continue;
      rail.add(to);
      front.push(to);
    }
  }
  return rail;
}

export const joinsAsWire = ({ family }: Link): boolean => family === 'wire';

/** The other end of a link that has an end here; null where it has none. */
export function otherEnd(link: Link, net: string): string | null {
  return link.a === net ? link.b : link.b === net ? link.a : null;
}

export function between(link: Link, one: ReadonlySet<string>, two: ReadonlySet<string>): boolean {
  return (one.has(link.a) && two.has(link.b)) || (two.has(link.a) && one.has(link.b));
}
