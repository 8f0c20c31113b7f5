import type { SchematicInput } from './schematic-input.ts';

const FAR = 999; // of nets that nothing leads to

/** How many parts away from the plug a net is, on the mains side; from the barrier, on the other side. Returns do not count as a way. */
export function ranksOf(input: SchematicInput): (net: string | null) => number {
  const ranks = new Map<string, number>();
  const start = [...input.inlet];
  for (const part of input.circuit.parts)
    if (input.zoneOf.get(part.id) === 'across')
      for (const { net } of part.pins) if (net !== null && input.sideOf.get(net) !== 'mains' && !input.returns.has(net)) start.push(net);
  let front = [...new Set(start)].sort();
  for (const net of front) ranks.set(net, 0);
  for (let rank = 1; front.length > 0; rank += 1) {
    const next: string[] = [];
    for (const part of input.circuit.parts) {
      if (input.zoneOf.get(part.id) === 'across') continue;
      const nets = part.pins.flatMap(({ net }) => (net === null || input.returns.has(net) ? [] : [net]));
      if (!nets.some((net) => front.includes(net))) continue;
      for (const net of nets)
        if (!ranks.has(net)) {
          ranks.set(net, rank);
          next.push(net);
        }
    }
    front = next.sort();
  }
  return (net) => (net === null ? FAR : (ranks.get(net) ?? FAR));
}
