import type { Circuit, CircuitSide } from '../circuit.ts';

/** One way from a net of the mains side to a net that can be touched: parts in a row, over nets that belong to neither side. */
export interface BarrierWay {
  readonly parts: readonly string[];
  /** The net it leaves, the floating ones between, the net it reaches. */
  readonly nets: readonly string[];
}

const REACHABLE: ReadonlySet<CircuitSide | undefined> = new Set(['output', 'touchable', 'earth']);
const LONGEST = 6; // parts in a row that are still followed; house choice
const MOST = 5000; // ways that are listed; a board with more was traced wrongly, house choice

/**
 * Every way across through parts alone, each part and each net once, shortest first. A way ends at the first net that can be touched and never
 * comes back to the mains side. Distances and windings are other ways and stand elsewhere. At most 5000 are listed.
 */
export function barrierWays(circuit: Circuit, sideOf: ReadonlyMap<string, CircuitSide>): BarrierWay[] {
  const hops = new Map<string, { part: string; to: string }[]>();
  for (const part of circuit.parts) {
    const nets = [...new Set(part.pins.flatMap(({ net }) => net ?? []))];
    for (const from of nets) for (const to of nets) if (from !== to) hops.set(from, [...(hops.get(from) ?? []), { part: part.id, to }]);
  }
  const useful = leadingAcross(hops, sideOf);
  const ways: BarrierWay[] = [];
  const walk = (parts: readonly string[], nets: readonly string[]): void => {
    for (const { part, to } of hops.get(nets.at(-1)!) ?? []) {
      if (parts.includes(part) || nets.includes(to)) continue;
      const side = sideOf.get(to);
      if (side === 'mains' || !useful.has(to)) continue;
      if (ways.length >= MOST) return;
      const way = { parts: [...parts, part], nets: [...nets, to] };
      if (REACHABLE.has(side)) ways.push(way);
      else if (way.parts.length < LONGEST) walk(way.parts, way.nets);
    }
  };
  for (const { id } of circuit.nets) if (sideOf.get(id) === 'mains') walk([], [id]);
  return ways.sort((a, b) => a.parts.length - b.parts.length || compare(idOf(a), idOf(b)));
}

/** Nets off the mains side from which something that can be touched is reached at all. */
function leadingAcross(hops: ReadonlyMap<string, readonly { to: string }[]>, sideOf: ReadonlyMap<string, CircuitSide>): Set<string> {
  const useful = new Set([...hops.keys()].filter((net) => REACHABLE.has(sideOf.get(net))));
  const front = [...useful];
  for (let net = front.pop(); net !== undefined; net = front.pop())
    for (const { to } of hops.get(net) ?? [])
      if (!useful.has(to) && sideOf.get(to) !== 'mains') {
        useful.add(to);
        front.push(to);
      }
  return useful;
}

function idOf({ parts, nets }: BarrierWay): string {
  return nets.map((net, index) => `${net} ${parts[index] ?? ''}`).join(' ');
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
