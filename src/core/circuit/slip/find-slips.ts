import type { Circuit } from '../circuit.ts';
import { spreadSides } from '../path/spread-sides.ts';
import type { Recognised } from '../recognise/recognise.ts';
import { backwardsDiodes, outputsTied } from './find-polarity-slips.ts';
import type { Slip } from './slip.ts';

/** Slips that the graph alone shows, in the order of the parts. What values and markings contradict is found beside them. */
export function findSlips(circuit: Circuit, crossing: ReadonlySet<string>, recognised: Recognised): Slip[] {
  const { straddling, of } = spreadSides(circuit, crossing);
  const capacitors = new Set(['ceramicCapacitor', 'filmCapacitor', 'capacitor']);
  return [
    ...dangling(circuit),
    ...circuit.parts.filter(isShorted).map(({ id, pins }): Slip => ({ code: 'shorted', part: id, nets: [pins[0]!.net!] })),
    // a capacitor there is judged by its class elsewhere: it is no slip
    ...straddling
      .filter(({ part }) => !capacitors.has(circuit.parts.find(({ id }) => id === part)?.kind ?? ''))
      .map(({ part, between }): Slip => ({ code: 'straddling', part, nets: between })),
    ...markedInVain(circuit, crossing, of),
    ...outputsTied(circuit, recognised),
    ...missingReturn(circuit, recognised),
    ...backwardsDiodes(recognised),
  ];
}

/** A net with one pin, unless a connector or a chip, which have pins for nothing, is all that is there. */
function dangling(circuit: Circuit): Slip[] {
  const pins = new Map<string, { part: string; spare: boolean }[]>();
  for (const { id, kind, pins: own } of circuit.parts)
    for (const { net } of own)
      if (net !== null)
        pins.set(net, [
          ...(pins.get(net) ?? []),
          {
            part: id,
            spare: kind === 'connector' || kind === 'controller' || kind === 'negotiationChip' || kind === null || kind === 'other',
          },
        ]);
  return [...pins].flatMap(([net, [only, ...more]]): Slip[] =>
    only === undefined || more.length > 0 || only.spare ? [] : [{ code: 'dangling', part: only.part, nets: [net] }],
  );
}

function isShorted({ kind, pins }: Circuit['parts'][number]): boolean {
  const nets = pins.map(({ net }) => net);
  return kind !== 'jumper' && pins.length === 2 && nets[0] !== null && nets[0] === nets[1];
}

/** Marked as crossing the barrier, while all of its followed pins lie on one side. */
function markedInVain(circuit: Circuit, crossing: ReadonlySet<string>, of: ReadonlyMap<string, string>): Slip[] {
  return circuit.parts.flatMap((part): Slip[] => {
    if (!crossing.has(part.id) || part.pins.some(({ net }) => net === null)) return [];
    const sides = new Set(part.pins.map(({ net }) => (net === null ? undefined : of.get(net))));
    return sides.size === 1 && !sides.has(undefined) && !sides.has('floating')
      ? [{ code: 'marksNoCrossing', part: part.id, nets: part.pins.flatMap(({ net }) => net ?? []) }]
      : [];
  });
}

/** An outlet of which one pole leads nowhere, or a rectified winding without an outlet's return. */
function missingReturn(circuit: Circuit, { graph, converter }: Recognised): Slip[] {
  return circuit.parts.flatMap((part): Slip[] => {
    if (part.kind !== 'connector') return [];
    return part.pins.flatMap(({ pin, net }): Slip[] => {
      if (pin !== '+' && pin !== '-') return [];
      const lonely = net === null || (graph.feet.get(net) ?? []).length < 2;
      const elsewhere =
        net !== null &&
        converter?.kind !== null &&
        converter !== null &&
        converter.output.size > 0 &&
        !converter.output.has(net) &&
        !converter.outputReturn.has(net) &&
        converter.secondaries.length === 1;
      return lonely || elsewhere ? [{ code: 'missingReturn', part: part.id, nets: net === null ? [] : [net], args: { pin } }] : [];
    });
  });
}
