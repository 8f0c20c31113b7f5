import type { Circuit } from '../circuit.ts';
import { between, joinsAsWire, railFrom } from '../graph/rail.ts';
import type { Recognised } from '../recognise/recognise.ts';
import type { Slip } from './slip.ts';

/**
 * A diode between a winding and the plus of an electrolytic capacitor that conducts out of the capacitor, or into its minus, and a capacitor
 * that stands with its plus on the lower rail. Only capacitors whose plus is known say anything.
 */
export function backwardsDiodes({ graph, converter }: Recognised): Slip[] {
  const slips: Slip[] = [];
  const stores = graph.links.filter(({ family, polarised }) => family === 'capacitor' && polarised);
  const hot = new Set(graph.windings.flatMap(({ dot, end }) => [dot, end]).flatMap((net) => net ?? []));
  for (const { family, a, b, parts } of graph.links) {
    if (family !== 'diode') continue;
    const back = (winding: string): Set<string> =>
      railFrom(
        graph.windings.flatMap(({ dot, end }) => (dot === winding ? (end ?? []) : end === winding ? (dot ?? []) : [])),
        graph.links,
        joinsAsWire,
      );
    // out of the plus of the store into the winding, whose other end is the minus of the store; or the other pole round
    const drains = hot.has(b) && stores.some((store) => store.a === a && back(b).has(store.b));
    const fills = hot.has(a) && stores.some((store) => store.b === b && back(a).has(store.a));
    if (drains || fills) slips.push({ code: 'backwards', part: parts[0]!, nets: [a, b] });
  }
  if (converter === null) return slips;
  for (const [plus, minus] of [
    [converter.plus, converter.minus],
    [converter.output, converter.outputReturn],
  ] as const)
    for (const store of stores)
      if (between(store, plus, minus) && minus.has(store.a) && !plus.has(store.a))
        slips.push({ code: 'capacitorBackwards', part: store.parts[0]!, nets: [store.a, store.b] });
  return slips;
}

/** Outlets whose plus poles come from different windings and yet share a net, or whose two poles are one net. */
export function outputsTied(circuit: Circuit, { graph, converter }: Recognised): Slip[] {
  const slips: Slip[] = [];
  for (const part of circuit.parts) {
    if (part.kind !== 'connector') continue;
    const [plus, minus] = ['+', '-'].map((pin) => part.pins.find((one) => one.pin === pin)?.net ?? null);
    if (plus == null || minus == null) continue;
    if (railFrom([plus], graph.links, joinsAsWire).has(minus)) slips.push({ code: 'outputsTied', part: part.id, nets: [plus, minus] });
  }
  const rails = (converter?.secondaries ?? []).map(({ winding, rail }) => ({
    winding,
    nets: railFrom([rail], graph.links, joinsAsWire),
    rail,
  }));
  for (const [index, one] of rails.entries())
    for (const two of rails.slice(index + 1))
      if (one.winding !== two.winding && one.nets.has(two.rail))
        slips.push({ code: 'outputsTied', part: one.winding.part, nets: [one.rail, two.rail] });
  return slips;
}
