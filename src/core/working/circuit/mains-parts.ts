import { between, joinsAsWire, railFrom } from '../../circuit/graph/rail.ts';
import type { Part } from '../../evidence/sample.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import type { CircuitFacts } from './circuit-facts.ts';

interface Named {
  readonly id: string;
  readonly about: string;
}

/** What is asked of the mains side: is there a fuse before everything, which class stands between the poles, what do the rectifiers block? */
export type MainsPart = Named &
  (
    | {
        readonly asks: 'fuse';
        readonly found: Part | null;
        readonly first: Part | null;
        /** Between the poles before the fuse. */
        readonly parts: readonly Part[];
      }
    | { readonly asks: 'class'; readonly part: Part }
    | {
        readonly asks: 'rectifier';
        readonly part: Part;
        /** Crests of the mains that it blocks. */
        readonly crests: number;
      }
  );

const OPENS = new Set(['fuse', 'fusibleResistor']);
const CRESTS = { bridge: 1, singleDiode: 2, doubler: 2 } as const;

/** Subjects on the mains side of a traced circuit; none where the inlet was not traced. */
export function mainsParts(bench: Bench, { recognised }: CircuitFacts): MainsPart[] {
  const { input, graph, jobs } = recognised;
  if (input === null) return [];
  const get = (ids: readonly string[]): Part[] => ids.flatMap((id) => bench.parts.get(id) ?? []);
  const kindOf = (id: string): string => findRead<string>(bench.parts.get(id)?.kind) ?? '';
  const fuses = [...jobs].filter(([id, { job }]) => job === 'fuse' && OPENS.has(kindOf(id))).map(([id]) => id);
  const inlet = new Set(graph.inlet);
  const bare = graph.inlet.map((net) =>
    railFrom(
      [net],
      graph.links,
      (link) => (joinsAsWire(link) || link.family === 'inductor') && !link.parts.some((id) => OPENS.has(kindOf(id))),
    ),
  );
  const [one = new Set<string>(), two = new Set<string>()] = bare;
  const early = graph.links.filter((link) => link.family !== 'wire' && between(link, one, two)).flatMap(({ parts }) => parts);
  const atPlug = graph.circuit.parts.filter(
    ({ kind, pins }) => kind !== 'connector' && kind !== 'jumper' && pins.some(({ net }) => net !== null && inlet.has(net)),
  );
  // what nobody identified may be the fuse; a resistor stands in the place of one
  const first = atPlug.find(({ kind }) => kind === null) ?? atPlug.find(({ kind }) => kind === 'resistor') ?? atPlug[0];
  const subjects: MainsPart[] = [
    {
      id: 'fuse',
      about: 'the first part that opens',
      asks: 'fuse',
      found: get(fuses)[0] ?? null,
      first: first === undefined ? null : (bench.parts.get(first.id) ?? null),
      parts: fuses.length === 0 ? [] : get(early),
    },
  ];
  for (const [id, { job }] of [...jobs].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const part = bench.parts.get(id);
    if (part === undefined) continue;
    const capacitor = kindOf(id).endsWith('apacitor');
    if ((job === 'acrossMains' || job === 'droppingCapacitor') && capacitor) subjects.push({ id, about: part.ref, asks: 'class', part });
    if (job === 'mainsRectifier' && input.rectifier !== null && input.dropper === null)
      subjects.push({ id, about: part.ref, asks: 'rectifier', part, crests: CRESTS[input.rectifier.kind] });
  }
  return subjects;
}
