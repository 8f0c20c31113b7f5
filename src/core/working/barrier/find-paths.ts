import { type Graph, neighbours, type Path, type Step, type Way } from './graph.ts';

/** What a way costs on a path: its strength, or one for every piece that has to fail. */
export type Cost = (way: Way) => number;
export const byStrength: Cost = ({ strength }) => strength;
export const byFailures: Cost = ({ strength }) => (strength > 0 ? 1 : 0);

interface Open {
  readonly at: string;
  readonly steps: readonly Step[];
  readonly nodes: readonly string[];
  readonly cost: number;
  /** The least that the whole path can come to. */
  readonly least: number;
}

const MOST_LOOKED_AT = 20_000; // open ends; a case with more of them is a mesh, and its weakest paths are found long before

/**
 * The cheapest paths from the mains to a hand, cheapest first, at most `most` of them. A path does not pass through a second mains conductor or
 * a second touchable one: the shorter piece of it is a path of its own and no stronger. Best-first over an exact bound of what is still to
 * come, so that paths come out in order and nothing but the asked number is walked to its end.
 */
export function findPaths(graph: Graph, most: number, cost: Cost = byStrength): Path[] {
  const around = neighbours(graph);
  const stands = new Map(graph.nodes.map(({ id, stands: where }) => [id, where]));
  const toHand = distances(graph, around, cost);
  const open = new Heap();
  for (const { id, stands: where } of graph.nodes) {
    const least = toHand.get(id);
    if (where === 'mains' && least !== undefined) open.push({ at: id, steps: [], nodes: [id], cost: 0, least });
  }
  const found: Path[] = [];
  for (let looked = 0; looked < MOST_LOOKED_AT && found.length < most; looked += 1) {
    const next = open.pop();
    if (next === undefined) break;
    if (stands.get(next.at) === 'hand') {
      found.push(toPath(next));
      continue;
    }
    for (const step of around.get(next.at)!) {
      const rest = toHand.get(step.to);
      if (rest === undefined || stands.get(step.to) === 'mains' || next.nodes.includes(step.to)) continue;
      const spent = next.cost + cost(step.way);
      open.push({ at: step.to, steps: [...next.steps, step], nodes: [...next.nodes, step.to], cost: spent, least: spent + rest });
    }
  }
  return found;
}

/** The path with the fewest pieces that must fail before the mains reaches a hand; among equals the weakest. */
export function findFewestFailures(graph: Graph): Path | null {
  const HEAVY = 1e6; // pieces outweigh strengths, which stay below ten layers
  return findPaths(graph, 1, (way) => byFailures(way) * HEAVY + byStrength(way))[0] ?? null;
}

function toPath({ steps, nodes }: Open): Path {
  const ways = steps.map(({ way }) => way);
  return {
    ways: ways.map(({ id }) => id),
    nodes,
    strength: ways.reduce((sum, { strength }) => sum + strength, 0),
    failures: ways.filter(({ strength }) => strength > 0).length,
  };
}

/** From every node the least that is left to a hand, without passing the mains again. */
function distances(graph: Graph, around: ReadonlyMap<string, readonly Step[]>, cost: Cost): Map<string, number> {
  const mains = new Set(graph.nodes.filter(({ stands }) => stands === 'mains').map(({ id }) => id));
  const done = new Map<string, number>();
  const open = new Heap();
  for (const { id, stands } of graph.nodes) if (stands === 'hand') open.push({ at: id, steps: [], nodes: [], cost: 0, least: 0 });
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (done.has(next.at)) continue;
    done.set(next.at, next.cost);
    if (mains.has(next.at)) continue;
    for (const { way, to } of around.get(next.at)!) {
      const spent = next.cost + cost(way);
      if (!done.has(to)) open.push({ at: to, steps: [], nodes: [], cost: spent, least: spent });
    }
  }
  return done;
}

/** Least first; equals in the order in which they came. */
class Heap {
  readonly #items: { readonly open: Open; readonly order: number }[] = [];
  #count = 0;

  push(open: Open): void {
    const items = this.#items;
    items.push({ open, order: this.#count });
    this.#count += 1;
    let at = items.length - 1;
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (!this.#before(at, up)) break;
      this.#swap(at, up);
      at = up;
    }
  }

  pop(): Open | undefined {
    const items = this.#items;
    const first = items[0];
    const last = items.pop();
    if (first === undefined || last === undefined || items.length === 0) return first?.open;
    items[0] = last;
    for (let at = 0; ; ) {
      const [left, right] = [2 * at + 1, 2 * at + 2];
      let least = at;
      if (left < items.length && this.#before(left, least)) least = left;
      if (right < items.length && this.#before(right, least)) least = right;
      if (least === at) return first.open;
      this.#swap(at, least);
      at = least;
    }
  }

  #before(a: number, b: number): boolean {
    const [one, other] = [this.#items[a]!, this.#items[b]!];
    return one.open.least === other.open.least ? one.order < other.order : one.open.least < other.open.least;
  }

  #swap(a: number, b: number): void {
    const kept = this.#items[a]!;
    this.#items[a] = this.#items[b]!;
    this.#items[b] = kept;
  }
}
