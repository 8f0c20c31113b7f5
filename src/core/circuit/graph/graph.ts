import type { Circuit, CircuitPart, CircuitSide } from '../circuit.ts';
import { spreadSides } from '../path/spread-sides.ts';
import { type Link, linksOf, type Winding, windingsOf } from './links.ts';

/** A pin of a part at a net. */
export interface Foot {
  readonly part: CircuitPart;
  readonly pin: string;
}

/** The circuit as the recogniser walks it. */
export interface Graph {
  readonly circuit: Circuit;
  readonly parts: ReadonlyMap<string, CircuitPart>;
  readonly links: readonly Link[];
  readonly windings: readonly Winding[];
  readonly feet: ReadonlyMap<string, readonly Foot[]>;
  readonly sideOf: ReadonlyMap<string, CircuitSide>;
  /** Nets of connectors with pins L and N, and with pins + and −, in the order of the parts' ids. */
  readonly inlet: readonly string[];
  readonly outlets: readonly { readonly plus: string | null; readonly minus: string | null }[];
}

export function buildGraph(circuit: Circuit, crossing: ReadonlySet<string> = new Set()): Graph {
  const feet = new Map<string, Foot[]>();
  for (const part of circuit.parts)
    for (const { pin, net } of part.pins) if (net !== null) feet.set(net, [...(feet.get(net) ?? []), { part, pin }]);
  const connectors = circuit.parts.filter(({ kind }) => kind === 'connector');
  const kept = new Set(connectors.flatMap(({ pins }) => pins.flatMap(({ net }) => net ?? [])));
  const netAt = (part: CircuitPart, pin: string): string | null => part.pins.find((one) => one.pin === pin)?.net ?? null;
  return {
    circuit,
    parts: new Map(circuit.parts.map((part) => [part.id, part])),
    links: linksOf(circuit, kept),
    windings: windingsOf(circuit),
    feet,
    sideOf: spreadSides(circuit, crossing).of,
    inlet: connectors.flatMap((part) => [netAt(part, 'L'), netAt(part, 'N')].flatMap((net) => net ?? [])),
    outlets: connectors
      .filter(({ pins }) => pins.some(({ pin }) => pin === '+' || pin === '-'))
      .map((part) => ({ plus: netAt(part, '+'), minus: netAt(part, '-') })),
  };
}

/** Parts of these kinds with a pin of these names on one of the nets. */
export function partsAt(
  graph: Graph,
  nets: Iterable<string>,
  kinds: readonly CircuitPart['kind'][],
  pins?: readonly string[],
): CircuitPart[] {
  const found = new Set<CircuitPart>();
  for (const net of nets)
    for (const { part, pin } of graph.feet.get(net) ?? [])
      if (kinds.includes(part.kind) && (pins === undefined || pins.includes(pin))) found.add(part);
  return [...found];
}

export function netOf(part: CircuitPart, pin: string): string | null {
  return part.pins.find((one) => one.pin === pin)?.net ?? null;
}
