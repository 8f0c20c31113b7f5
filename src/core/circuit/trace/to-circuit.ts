import type { Circuit, CircuitSide } from '../circuit.ts';
import type { Trace } from './traced.ts';

const LONGEST_ID = 36; // an id may have 40; the rest is for a number that tells two alike apart

/** The circuit of a trace, and the ids of the parts that are said to cross the barrier. */
export function toCircuit({ parts, sides }: Trace): { circuit: Circuit; crossing: Set<string> } {
  const nets = new Map<string, string>();
  const taken = new Set<string>();
  const netId = (name: string): string => {
    const known = nets.get(name);
    if (known !== undefined) return known;
    const id = unused(toSlug(name), taken);
    nets.set(name, id);
    return id;
  };
  const sideOf = new Map<string, CircuitSide>();
  for (const { side, nets: names } of sides) for (const name of names) sideOf.set(netId(name), side);
  const partIds = new Set<string>();
  const crossing = new Set<string>();
  const made = parts.map(({ ref, kind, pins, crosses }) => {
    const id = unused(toSlug(ref), partIds);
    if (crosses) crossing.add(id);
    return { id, ref, kind, pins: pins.map(({ pin, net }) => ({ pin, net: net === null ? null : netId(net) })) };
  });
  return { circuit: { parts: made, nets: [...nets].map(([name, id]) => ({ id, name, side: sideOf.get(id) ?? null })) }, crossing };
}

/** "OUT-" is "out-minus", "HV+" is "hv-plus". */
export function toSlug(name: string): string {
  const spelled = name
    .toLowerCase()
    .replace(/\+$/, '-plus')
    .replace(/[-−]$/, '-minus')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, LONGEST_ID);
  return spelled === '' ? 'net' : spelled;
}

function unused(slug: string, taken: Set<string>): string {
  let id = slug;
  for (let number = 2; taken.has(id); number += 1) id = `${slug}-${number}`;
  taken.add(id);
  return id;
}
