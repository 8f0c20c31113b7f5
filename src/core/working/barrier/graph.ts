/** What can carry the mains, what a hand can touch, and what floats between. */
export interface Node {
  readonly id: string;
  readonly stands: 'mains' | 'hand' | 'between';
}

/** One piece of insulation between two conductors. Strength in layers: one is basic, two are double or reinforced, nothing is nothing. */
export interface Way {
  readonly id: string;
  readonly ends: readonly [string, string];
  readonly strength: number;
}

export interface Graph<W extends Way = Way> {
  readonly nodes: readonly Node[];
  readonly ways: readonly W[];
}

/** A path from the mains to a hand: pieces in a row, whose strengths add. */
export interface Path {
  /** Ids of its ways, from the mains outwards. */
  readonly ways: readonly string[];
  /** Ids of its conductors, the mains end first. */
  readonly nodes: readonly string[];
  readonly strength: number;
  /** How many pieces of insulation must fail for it to conduct: a way without any is none. */
  readonly failures: number;
}

export interface Step {
  readonly way: Way;
  readonly to: string;
}

/** For every node the ways that leave it, in order of their ids, so that ties break the same way each time. */
export function neighbours(graph: Graph): ReadonlyMap<string, readonly Step[]> {
  const found = new Map<string, Step[]>(graph.nodes.map(({ id }) => [id, []]));
  for (const way of graph.ways.toSorted((a, b) => (a.id < b.id ? -1 : 1))) {
    const [a, b] = way.ends;
    if (a === b) continue;
    if (way.strength < 0 || !Number.isFinite(way.strength)) throw new Error(`${way.id} has the strength ${way.strength}`);
    const [from, to] = [found.get(a), found.get(b)];
    if (from === undefined || to === undefined) throw new Error(`${way.id} leads to a conductor that is not there`);
    from.push({ way, to: b });
    to.push({ way, to: a });
  }
  return found;
}
