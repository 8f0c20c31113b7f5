import { type Circuit, type CircuitPart, type CircuitSide, TWO_SIDED } from '../circuit.ts';
import { LED_PINS, windingOf } from '../pin-names.ts';

export interface Sides {
  /** Side of each net: as stated, else as it follows from the parts; a net that nothing leads to is missing. */
  readonly of: ReadonlyMap<string, CircuitSide>;
  /** Parts that are not made with two sides, are not said to cross, and yet join two different sides. */
  readonly straddling: readonly { readonly part: string; readonly between: readonly [string, string] }[];
}

/**
 * The side of a net follows from the nets whose side is stated: what a part joins lies on one side, unless the part is made to cross the
 * barrier (transformer, optocoupler) or is said to (`crossing`). A floating net takes no side and hands none on. Where a part joins both
 * sides all the same, it is the one without which the most transformers and optocouplers stand between two sides, as they are made to.
 */
export function spreadSides(circuit: Circuit, crossing: ReadonlySet<string>): Sides {
  let sides = spreadOnce(circuit, crossing);
  const taken = new Set(crossing);
  const blamed: string[] = [];
  for (let number = 0; number < MOST_BLAMED && sides.straddling.length > 0; number += 1) {
    const found = bestWithout(circuit, taken, sides);
    if (found === null) break;
    taken.add(found.part);
    blamed.push(found.part);
    sides = found.sides;
  }
  const named = blamed.flatMap((id) =>
    straddle(id, circuit.parts.find((part) => part.id === id)?.pins.flatMap(({ net }) => net ?? []) ?? [], sides.of),
  );
  return { of: sides.of, straddling: [...named, ...sides.straddling] };
}

const MOST_BLAMED = 4; // parts across the barrier that are told apart; a board with more is traced wrongly as a whole, house choice

function spreadOnce(circuit: Circuit, crossing: ReadonlySet<string>): Sides {
  const of = new Map<string, CircuitSide>();
  for (const { id, side } of circuit.nets) if (side !== null) of.set(id, side);
  const groups = circuit.parts.flatMap((part) => joinedNets(part, crossing).map((nets) => ({ part: part.id, nets })));
  const byNet = new Map<string, { part: string; nets: readonly string[] }[]>();
  for (const group of groups) for (const net of group.nets) byNet.set(net, [...(byNet.get(net) ?? []), group]);

  // breadth first from all stated nets at once, in the order of their ids, so that the order of the lines does not matter
  let front = [...of.keys()].sort();
  while (front.length > 0) {
    const next: string[] = [];
    for (const net of front) {
      const side = of.get(net);
      if (side === undefined || side === 'floating') continue;
      for (const { nets } of byNet.get(net) ?? [])
        for (const other of nets)
          if (!of.has(other)) {
            of.set(other, side);
            next.push(other);
          }
    }
    front = next.sort();
  }
  return { of, straddling: groups.flatMap(({ part, nets }) => straddle(part, nets, of)) };
}

/** The part that, taken as crossing, leaves most things that are made with two sides between two sides, and fewest conflicts. */
function bestWithout(circuit: Circuit, crossing: ReadonlySet<string>, now: Sides): { part: string; sides: Sides } | null {
  const score = ({ of, straddling }: Sides): number =>
    circuit.parts.filter((part) => standsBetween(part, crossing, of)).length - straddling.length;
  let best: { part: string; sides: Sides; score: number } | null = null;
  for (const part of circuit.parts.toSorted((a, b) => (a.id < b.id ? -1 : 1))) {
    if (TWO_SIDED.has(part.kind) || crossing.has(part.id) || part.pins.length < 2) continue;
    const sides = spreadOnce(circuit, new Set([...crossing, part.id]));
    const own = score(sides);
    const blames =
      straddle(
        part.id,
        part.pins.flatMap(({ net }) => net ?? []),
        sides.of,
      ).length > 0;
    if (blames && own > (best?.score ?? score(now))) best = { part: part.id, sides, score: own };
  }
  return best;
}

function standsBetween({ id, kind, pins }: CircuitPart, crossing: ReadonlySet<string>, of: ReadonlyMap<string, CircuitSide>): boolean {
  if (!TWO_SIDED.has(kind) && !crossing.has(id)) return false;
  const sides = new Set(pins.flatMap(({ net }) => (net === null ? [] : (of.get(net) ?? []))));
  return sides.has('mains') && sides.size > 1;
}

function straddle(part: string, nets: readonly string[], of: ReadonlyMap<string, CircuitSide>): Sides['straddling'] {
  const mains = nets.find((net) => of.get(net) === 'mains');
  const other = nets.find((net) => of.has(net) && of.get(net) !== 'mains' && of.get(net) !== 'floating');
  return mains === undefined || other === undefined ? [] : [{ part, between: [mains, other] }];
}

/** Nets that a part holds on one side: all of its pins, or each winding, or each half of an optocoupler; nothing for a part that crosses. */
export function joinedNets(part: CircuitPart, crossing: ReadonlySet<string>): string[][] {
  const followed = part.pins.flatMap(({ pin, net }) => (net === null ? [] : [{ pin, net }]));
  if (!TWO_SIDED.has(part.kind)) return crossing.has(part.id) || followed.length < 2 ? [] : [followed.map(({ net }) => net)];
  const groups = new Map<string, string[]>();
  for (const { pin, net } of followed) {
    const group = part.kind === 'optocoupler' ? (LED_PINS.has(pin) ? 'led' : 'transistor') : (windingOf(pin)?.winding ?? pin);
    groups.set(group, [...(groups.get(group) ?? []), net]);
  }
  return [...groups.values()].filter((nets) => nets.length > 1);
}
