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
 * barrier (transformer, optocoupler) or is said to (`crossing`). A floating net takes no side and hands none on.
 */
export function spreadSides(circuit: Circuit, crossing: ReadonlySet<string>): Sides {
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
