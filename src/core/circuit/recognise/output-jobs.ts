import { type Graph, netOf, partsAt } from '../graph/graph.ts';
import type { Link } from '../graph/links.ts';
import { between, otherEnd } from '../graph/rail.ts';
import type { Converter } from './converter.ts';
import type { Jobs } from './job.ts';
import type { Regulation } from './regulation.ts';

/** Jobs of the output side, of the regulation, and of what crosses the barrier. */
export function giveOutputJobs(jobs: Jobs, graph: Graph, converter: Converter, regulation: Regulation): void {
  const { output, outputReturn } = converter;
  for (const { rectifiers, rail } of converter.secondaries) jobs.give(rectifiers, 'outputRectifier', [rail]);
  giveRegulation(jobs, graph, converter, regulation);
  for (const part of graph.circuit.parts) {
    if (part.kind === 'negotiationChip') jobs.give([part.id], 'negotiation', []);
    const [drain, source] = [netOf(part, 'D'), netOf(part, 'S')];
    if (part.kind === 'mosfet' && drain !== null && source !== null && output.has(drain) && output.has(source))
      jobs.give([part.id], 'outputSwitch', [drain, source]);
    if (part.kind === 'led') giveLamp(jobs, graph, part.id, netOf(part, 'A'), netOf(part, 'K'), new Set([...output, ...outputReturn]));
  }
  for (const link of graph.links) {
    const at = [link.a, link.b];
    if (between(link, output, outputReturn)) {
      if (link.family === 'capacitor') jobs.give(link.parts, 'outputStore', at);
      if (link.family === 'resistor') jobs.give(link.parts, 'outputBleeder', at);
    }
    if (link.family === 'inductor' && (at.every((net) => output.has(net)) || at.every((net) => outputReturn.has(net))))
      jobs.give(link.parts, 'outputFilter', at);
    const across = sidesOf(graph, link);
    if (across && link.family === 'capacitor') jobs.give(link.parts, 'barrierCapacitor', at);
    if (across && (link.family === 'resistor' || link.family === 'resistorCapacitor')) jobs.give(link.parts, 'barrierResistor', at);
  }
  giveSnubbers(jobs, graph, converter);
}

/** Ends on the mains side and off it; two capacitors in a row meet at a net of neither side. */
function sidesOf(graph: Graph, { a, b }: Link): boolean {
  const [one, two] = [graph.sideOf.get(a), graph.sideOf.get(b)];
  return (one === 'mains') !== (two === 'mains') || one === 'floating' || two === 'floating';
}

function giveLamp(jobs: Jobs, graph: Graph, id: string, anode: string | null, cathode: string | null, rails: ReadonlySet<string>): void {
  if (anode === null || cathode === null) return;
  jobs.give([id], 'lamp', [anode, cathode]);
  for (const link of graph.links) {
    const far = link.family === 'resistor' ? (otherEnd(link, anode) ?? otherEnd(link, cathode)) : null;
    if (far !== null && rails.has(far) && !(rails.has(link.a) && rails.has(link.b)))
      jobs.give(link.parts, 'lampResistor', [link.a, link.b], [id]);
  }
}

function giveRegulation(jobs: Jobs, graph: Graph, { output }: Converter, regulation: Regulation): void {
  const { optocoupler, reference, divider, zeners, ledResistors, ledBypass } = regulation;
  const senses = reference ?? regulation.controller;
  if (optocoupler !== null)
    jobs.give(
      [optocoupler.id],
      'optocoupler',
      [netOf(optocoupler, 'A') ?? ''].filter((net) => net !== ''),
    );
  if (reference !== null) jobs.give([reference.id], 'reference', [...output].slice(0, 1));
  const give = (links: readonly Link[], job: Parameters<Jobs['give']>[1], by: readonly string[]): void => {
    for (const { parts, a, b } of links) jobs.give(parts, job, [a, b], by);
  };
  const bySense = senses === null ? [] : [senses.id];
  if (divider !== null) {
    give(divider.upper, 'dividerUpper', bySense);
    give(divider.lower, 'dividerLower', bySense);
    give(
      divider.legs,
      'voltageLeg',
      partsAt(
        graph,
        divider.legs.flatMap(({ a, b }) => [a, b]),
        ['negotiationChip'],
      ).map(({ id }) => id),
    );
  }
  give(zeners, 'regulatingZener', optocoupler === null ? [] : [optocoupler.id]);
  give(ledResistors, 'ledResistor', optocoupler === null ? [] : [optocoupler.id]);
  give(ledBypass, 'ledBypass', optocoupler === null ? [] : [optocoupler.id]);
  const [cathode, pin] = reference === null ? [null, null] : [netOf(reference, 'K'), netOf(reference, 'R')];
  if (reference === null || cathode === null || pin === null) return;
  for (const link of graph.links)
    if (
      ['capacitor', 'resistor', 'resistorCapacitor'].includes(link.family) &&
      (between(link, new Set([cathode]), new Set([pin])) || (link.family !== 'resistor' && otherEnd(link, pin) !== null))
    )
      jobs.give(link.parts, 'compensation', [link.a, link.b], [reference.id]);
}

/** Resistor and capacitor in a row, or a capacitor alone, across a diode, a winding or the switch. */
function giveSnubbers(jobs: Jobs, graph: Graph, { switchNode }: Converter): void {
  const spans: (readonly [string, string])[] = [
    ...graph.links.filter(({ family }) => family === 'diode').map(({ a, b }) => [a, b] as const),
    ...graph.windings.flatMap(({ dot, end }) => (dot === null || end === null ? [] : [[dot, end] as const])),
    ...graph.circuit.parts.flatMap((part) => {
      const ends = [netOf(part, 'D') ?? netOf(part, 'C'), netOf(part, 'S') ?? netOf(part, 'E')];
      return (part.kind === 'mosfet' || part.kind === 'bipolarTransistor') && ends[0] != null && ends[1] != null
        ? [[ends[0], ends[1]] as const]
        : [];
    }),
  ];
  const across = (net: string): boolean => net === switchNode;
  for (const link of graph.links) {
    if (link.family !== 'resistorCapacitor' && link.family !== 'capacitor') continue;
    const spanned = spans.some(([a, b]) => (link.a === a && link.b === b) || (link.a === b && link.b === a));
    if (spanned || across(link.a) || across(link.b)) jobs.give(link.parts, 'snubber', [link.a, link.b]);
  }
}
