import type { Circuit, CircuitPart } from '../../src/core/circuit/circuit.ts';
import { windingOf } from '../../src/core/circuit/pin-names.ts';

/** A whole number from 0 up to, not including, the one given. */
export type Pick = (below: number) => number;

export interface Copy {
  readonly circuit: Circuit;
  readonly crossing: ReadonlySet<string>;
  /** Id in the copy of each part of the original. */
  readonly idOf: ReadonlyMap<string, string>;
  /** Ids of halves: each must get the job of the part it was cut from. */
  readonly halves: ReadonlyMap<string, string>;
}

function shuffled<T>(list: readonly T[], pick: Pick): T[] {
  const rest = [...list];
  const out: T[] = [];
  while (rest.length > 0) out.push(...rest.splice(pick(rest.length), 1));
  return out;
}

/** The same circuit as another person would have traced it: other names, another order, symmetric parts the other way round. */
export function copyOf(circuit: Circuit, crossing: ReadonlySet<string>, pick: Pick, change: { split: boolean; snubber: boolean }): Copy {
  const halves = new Map<string, string>();
  let parts: CircuitPart[] = circuit.parts.map((part) => ({ ...part }));
  const nets = [...circuit.nets];
  const resistors = parts.filter(({ kind, pins }) => kind === 'resistor' && pins.every(({ net }) => net !== null));
  const cut = resistors[change.split && resistors.length > 0 ? pick(resistors.length) : -1];
  if (cut !== undefined) {
    const [one, two] = cut.pins;
    nets.push({ id: 'cut-net', name: 'CUT', side: null });
    parts = parts.flatMap((part) =>
      part !== cut
        ? [part]
        : [
            { ...cut, pins: [one!, { pin: '2', net: 'cut-net' }] },
            { ...cut, id: 'cut-half', ref: 'R99', pins: [{ pin: '1', net: 'cut-net' }, two!] },
          ],
    );
    halves.set('cut-half', cut.id);
  }
  const diodes = parts.filter(({ kind, pins }) => kind === 'diode' && pins.every(({ net }) => net !== null));
  const damped = diodes[change.snubber && diodes.length > 0 ? pick(diodes.length) : -1];
  if (damped !== undefined) {
    nets.push({ id: 'damp-net', name: 'DAMP', side: null });
    const [one, two] = damped.pins;
    parts.push(
      {
        id: 'damp-r',
        ref: 'R98',
        kind: 'resistor',
        pins: [
          { pin: '1', net: one!.net },
          { pin: '2', net: 'damp-net' },
        ],
      },
      {
        id: 'damp-c',
        ref: 'C98',
        kind: 'ceramicCapacitor',
        pins: [
          { pin: '1', net: 'damp-net' },
          { pin: '2', net: two!.net },
        ],
      },
    );
  }
  const flipDots = pick(2) === 1;
  const flipped = (part: CircuitPart): CircuitPart => {
    const pairs: Record<string, string> = {};
    if (part.kind === 'transformer' && flipDots)
      for (const { pin } of part.pins) {
        const read = windingOf(pin);
        if (read !== null) pairs[pin] = `${read.winding}.${read.end === '1' ? '2' : '1'}`;
      }
    else if (part.kind === 'bridgeRectifier' && pick(2) === 1) Object.assign(pairs, { '~1': '~2', '~2': '~1' });
    else if (part.kind === 'commonModeChoke' && pick(2) === 1) Object.assign(pairs, { '1': '3', '2': '4', '3': '1', '4': '2' });
    else if (part.pins.length === 2 && part.pins.every(({ pin }) => pin === '1' || pin === '2') && pick(2) === 1)
      Object.assign(pairs, { '1': '2', '2': '1' });
    return { ...part, pins: part.pins.map(({ pin, net }) => ({ pin: pairs[pin] ?? pin, net })) };
  };
  const partNames = shuffled(parts, pick).map(({ id }, index) => [id, `p${index}`] as const);
  const netNames = shuffled(nets, pick).map(({ id }, index) => [id, `n${index}`] as const);
  const partOf = new Map<string, string>(partNames);
  const netOf = new Map<string, string>(netNames);
  return {
    circuit: {
      parts: shuffled(parts, pick)
        .map(flipped)
        .map((part) => ({
          ...part,
          id: partOf.get(part.id)!,
          ref: `X${partOf.get(part.id)}`,
          pins: shuffled(part.pins, pick).map(({ pin, net }) => ({ pin, net: net === null ? null : netOf.get(net)! })),
        })),
      nets: shuffled(nets, pick).map((net) => ({ ...net, id: netOf.get(net.id)!, name: `N${netOf.get(net.id)}` })),
    },
    crossing: new Set([...crossing].map((id) => partOf.get(id)!)),
    idOf: partOf,
    halves: new Map([...halves].map(([half, whole]) => [partOf.get(half)!, whole])),
  };
}
