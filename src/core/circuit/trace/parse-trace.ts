import { isRefusal, type Refusal, refuse } from '../../quantity/refusal.ts';
import type { CircuitSide } from '../circuit.ts';
import { parseLine } from './parse-line.ts';
import type { Trace, TracedPart } from './traced.ts';

const LONGEST = 20_000; // lines; a board of this size is not a small adapter, house choice

/**
 * Lines of a traced circuit. What cannot be read is refused with its line ("line 4") and what was expected there; every other line is
 * kept.
 */
export function parseTrace(text: string): { trace: Trace; refusals: Refusal[] } {
  const refusals: Refusal[] = [];
  const parts = new Map<string, TracedPart>();
  const sides: { side: CircuitSide; nets: readonly string[] }[] = [];
  const sideOf = new Map<string, CircuitSide>();
  for (const [index, line] of text
    .split(/\r\n?|\n/)
    .slice(0, LONGEST)
    .entries()) {
    const place = `line ${index + 1}`;
    const read = parseLine(line);
    if (read === null) continue;
    if (isRefusal(read)) {
      refusals.push({ ...read, place });
      continue;
    }
    if ('side' in read) {
      const other = read.nets.find((net) => sideOf.has(net) && sideOf.get(net) !== read.side);
      if (other !== undefined)
        refusals.push(refuse('two-sides', other, `one side for a net; it was given ${sideOf.get(other)} before`, { place }));
      else {
        for (const net of read.nets) sideOf.set(net, read.side);
        sides.push(read);
      }
      continue;
    }
    const added = add(parts, read.part);
    if (isRefusal(added)) refusals.push({ ...added, place });
    else parts.set(read.part.ref, added);
  }
  return { trace: { parts: [...parts.values()], sides }, refusals };
}

/** A new part, or one winding more of a transformer that is there already. */
function add(parts: ReadonlyMap<string, TracedPart>, part: TracedPart): TracedPart | Refusal {
  const known = parts.get(part.ref);
  if (known === undefined) return part;
  if (known.kind !== 'transformer' || part.kind !== 'transformer')
    return refuse('reference-twice', part.ref, 'a reference that stands once');
  const [winding] = part.windings;
  if (winding === undefined || known.windings.some(({ name }) => name === winding.name))
    return refuse('winding-twice', winding?.name ?? part.ref, 'each winding once');
  return {
    ...known,
    crosses: known.crosses || part.crosses,
    pins: [...known.pins, ...part.pins],
    windings: [...known.windings, winding],
  };
}
