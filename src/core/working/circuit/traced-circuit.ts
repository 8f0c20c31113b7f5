import type { Circuit } from '../../circuit/circuit.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';

export interface TracedCircuit {
  readonly circuit: Circuit;
  /** Parts that may stand across the barrier: said to, or of a class for it. */
  readonly crossing: ReadonlySet<string>;
}

const FEWEST = 2; // parts that share a net: less is no circuit

/** The parts of the case that have pins, as a circuit; null where nobody traced one. */
export function tracedCircuit(bench: Bench): TracedCircuit | null {
  const parts = bench.one.parts
    .filter(({ pins }) => pins !== undefined && pins.length > 0)
    .map(({ id, ref, kind, pins }) => ({
      id,
      ref,
      kind: findRead(kind),
      pins: (pins ?? []).map(({ pin, net }) => ({ pin, net: findRead(net) })),
    }));
  const nets = bench.one.conductors.map(({ id, name, side }) => ({ id, name, side: findRead(side) }));
  const uses = new Map<string, number>();
  for (const { pins } of parts) for (const net of new Set(pins.flatMap((pin) => pin.net ?? []))) uses.set(net, (uses.get(net) ?? 0) + 1);
  if (![...uses.values()].some((count) => count >= FEWEST)) return null;
  const crossing = bench.one.parts.filter(
    ({ crosses, safetyClass }) => crosses === true || findRead(safetyClass)?.startsWith('Y') === true,
  );
  return { circuit: { parts, nets }, crossing: new Set(crossing.map(({ id }) => id)) };
}
