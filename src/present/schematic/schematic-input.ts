import type { Circuit, CircuitPart, CircuitSide } from '../../core/circuit/circuit.ts';
import type { Recognised } from '../../core/circuit/recognise/recognise.ts';
import type { PartMark } from './part-mark.ts';

export type Zone = 'mains' | 'across' | 'output';

/** What a drawing needs to know of a circuit beside its parts. */
export interface SchematicInput {
  readonly circuit: Circuit;
  readonly zoneOf: ReadonlyMap<string, Zone>;
  /** Nets that are drawn as returns, below each part, and not as wires. */
  readonly returns: ReadonlySet<string>;
  /** Nets that come from above. */
  readonly supplies: ReadonlySet<string>;
  /** Lines of text beside each part, by id: reference first. */
  readonly labels: ReadonlyMap<string, readonly string[]>;
  /** Signs beside references, by part. */
  readonly marks: ReadonlyMap<string, PartMark>;
  /** Turns of windings, "P" to "72", by part. */
  readonly turns: ReadonlyMap<string, ReadonlyMap<string, string>>;
  readonly sideOf: ReadonlyMap<string, CircuitSide>;
  readonly inlet: ReadonlySet<string>;
  /** Nets with a single pin. */
  readonly lone: ReadonlySet<string>;
  readonly netNames: ReadonlyMap<string, string>;
  /** Nets of the two poles of the mains, up to the rectifier. */
  readonly poles: readonly [ReadonlySet<string>, ReadonlySet<string>];
}

const FEWEST_RETURNS = 3; // pins from which a return is drawn at each part and no longer as a wire

/** Zones follow from the sides of a part's nets: one that reaches both stands across the barrier. */
export function toSchematicInput(
  { graph, converter, input }: Recognised,
  labels: ReadonlyMap<string, readonly string[]>,
  turns: SchematicInput['turns'] = new Map(),
  marks: SchematicInput['marks'] = new Map(),
): SchematicInput {
  const { circuit, sideOf } = graph;
  const pins = (net: string): number => graph.feet.get(net)?.length ?? 0;
  const returns = new Set([...(converter?.minus ?? []), ...(converter?.outputReturn ?? [])].filter((net) => pins(net) >= FEWEST_RETURNS));
  const supplies = new Set([
    ...(converter?.plus ?? []),
    ...(converter?.output ?? []),
    ...(converter?.auxiliaries.map(({ rail }) => rail) ?? []),
  ]);
  for (const net of returns) supplies.delete(net);
  return {
    circuit,
    zoneOf: new Map(circuit.parts.map((part) => [part.id, zoneOf(part, sideOf)])),
    returns,
    supplies,
    labels,
    turns,
    marks,
    sideOf,
    inlet: new Set(graph.inlet),
    lone: new Set(circuit.nets.flatMap(({ id }) => (pins(id) === 1 ? [id] : []))),
    netNames: new Map(circuit.nets.map(({ id, name }) => [id, name])),
    poles: input?.poles ?? [new Set(), new Set()],
  };
}

function zoneOf(part: CircuitPart, sideOf: ReadonlyMap<string, CircuitSide>): Zone {
  const sides = part.pins.flatMap(({ net }) => (net === null ? [] : [sideOf.get(net)]));
  const mains = sides.includes('mains');
  const other = sides.some((side) => side !== undefined && side !== 'mains');
  return mains && other ? 'across' : other ? 'output' : 'mains';
}
