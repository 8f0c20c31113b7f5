import type { CircuitPart } from '../circuit.ts';
import { findPath } from '../graph/find-path.ts';
import { type Graph, netOf, partsAt } from '../graph/graph.ts';
import type { Family, Link } from '../graph/links.ts';
import { between, joinsAsWire, otherEnd, railFrom } from '../graph/rail.ts';
import type { Converter } from './converter.ts';

export type Drive = 'controller' | 'selfOscillating';
export type FeedbackKind = 'optocoupler' | 'auxiliaryZener' | 'auxiliarySense' | 'outputSense' | 'zenerAcross' | 'none';

/** Resistors from the output to the reference pin and from there to its return, and the legs that a chip switches. */
export interface Divider {
  readonly at: string;
  readonly upper: readonly Link[];
  readonly lower: readonly Link[];
  readonly legs: readonly Link[];
}

export interface Regulation {
  readonly drive: Drive | null;
  readonly controller: CircuitPart | null;
  /** Transistors that take the drive away from the switch. */
  readonly limiters: readonly CircuitPart[];
  /** From the drive pin to the winding that drives it. */
  readonly drivePath: readonly Link[];
  readonly feedback: FeedbackKind | null;
  readonly optocoupler: CircuitPart | null;
  readonly reference: CircuitPart | null;
  readonly divider: Divider | null;
  /** Zener diodes that set the output. */
  readonly zeners: readonly Link[];
  readonly ledResistors: readonly Link[];
  readonly ledBypass: readonly Link[];
}

const DRIVE_FAMILIES: readonly Family[] = ['resistor', 'capacitor', 'resistorCapacitor', 'diode', 'wire', 'inductor'];
const MOST_DRIVE_LINKS = 3; // base resistor, capacitor, and one part more
const MOST_LED_LINKS = 3;

export function findRegulation(graph: Graph, converter: Converter): Regulation {
  const driven = findDrive(graph, converter);
  const base: Regulation = {
    ...driven,
    feedback: null,
    optocoupler: null,
    reference: null,
    divider: null,
    zeners: [],
    ledResistors: [],
    ledBypass: [],
  };
  if (converter.kind === null) return base;
  return (
    byOptocoupler(graph, converter, base) ??
    byAuxiliaryZener(graph, converter, base) ??
    byAuxiliarySense(graph, converter, base) ??
    byOutput(graph, converter, base) ??
    acrossOutput(graph, converter, base) ?? { ...base, feedback: 'none' }
  );
}

function findDrive(graph: Graph, converter: Converter): Pick<Regulation, 'drive' | 'controller' | 'limiters' | 'drivePath'> {
  const { switch: own, minus, plus, primary } = converter;
  const nothing = { drive: null, controller: null, limiters: [], drivePath: [] } as const;
  if (own === null) return nothing;
  if (own.kind === 'controller') return { ...nothing, drive: 'controller', controller: own };
  const drivePin = netOf(own, own.kind === 'mosfet' ? 'G' : 'B');
  if (drivePin === null) return nothing;
  const rails = new Set([...plus, ...minus]);
  const near = new Set(
    [drivePin, ...graph.links.flatMap((link) => (link.family === 'resistor' ? (otherEnd(link, drivePin) ?? []) : []))].filter(
      (net) => !rails.has(net),
    ),
  );
  const limiters = partsAt(graph, near, ['bipolarTransistor'], ['C']).filter((part) => part !== own);
  const foot = netOf(own, own.kind === 'mosfet' ? 'S' : 'E');
  const [controller] = partsAt(graph, [...near, ...(foot === null || rails.has(foot) ? [] : [foot])], ['controller']);
  if (controller !== undefined) return { drive: 'controller', controller, limiters, drivePath: [] };
  const ends = new Set(
    graph.windings
      .filter((one) => one.part === primary?.part && one !== primary)
      .flatMap(({ dot, end }) => [dot, end])
      .flatMap((net) => (net === null || rails.has(net) || graph.sideOf.get(net) === 'output' ? [] : [net])),
  );
  const direct = ends.has(drivePin);
  const path = direct ? [] : findPath(graph, [drivePin], ends, DRIVE_FAMILIES, MOST_DRIVE_LINKS, rails);
  return path === null ? { ...nothing, limiters } : { drive: 'selfOscillating', controller: null, limiters, drivePath: path };
}

function byOptocoupler(graph: Graph, converter: Converter, base: Regulation): Regulation | null {
  for (const part of graph.circuit.parts) {
    if (part.kind !== 'optocoupler') continue;
    const [anode, cathode] = [netOf(part, 'A'), netOf(part, 'K')];
    if (anode === null || cathode === null) continue;
    const rails = new Set([...converter.output, ...converter.outputReturn]);
    const families: readonly Family[] = ['resistor', 'wire', 'zener', 'led'];
    const up = converter.output.has(anode)
      ? []
      : findPath(graph, [anode], converter.output, families, MOST_LED_LINKS, new Set([cathode, ...converter.outputReturn]));
    if (up === null) continue;
    const around = new Set(
      [
        cathode,
        ...graph.links.flatMap((link) => (link.family === 'resistor' || link.family === 'zener' ? (otherEnd(link, cathode) ?? []) : [])),
      ].filter((net) => !rails.has(net)),
    );
    const [reference] = partsAt(graph, around, ['shuntReference'], ['K']);
    const down =
      reference === undefined
        ? findPath(graph, [cathode], converter.outputReturn, families, MOST_LED_LINKS, new Set([anode, ...converter.output]))
        : pathTo(graph, cathode, netOf(reference, 'K'));
    const row = [...up, ...(down ?? [])];
    return {
      ...base,
      feedback: 'optocoupler',
      optocoupler: part,
      reference: reference ?? null,
      divider: reference === undefined ? null : dividerAt(graph, converter, reference),
      zeners: row.filter(({ family }) => family === 'zener'),
      ledResistors: row.filter(({ family }) => family === 'resistor'),
      ledBypass: graph.links.filter(
        (link) =>
          link.family === 'resistor' &&
          !row.includes(link) &&
          (between(link, new Set([anode]), new Set([cathode])) || between(link, converter.output, new Set([cathode]))),
      ),
    };
  }
  return null;
}

function pathTo(graph: Graph, from: string, to: string | null): readonly Link[] {
  if (to === null || from === to) return [];
  return findPath(graph, [from], new Set([to]), ['resistor', 'wire', 'zener'], 2) ?? [];
}

/** The divider at the reference pin; null unless both an upper and a lower resistor are there. */
function dividerAt(graph: Graph, converter: Converter, reference: CircuitPart): Divider | null {
  const [at, foot] = [netOf(reference, 'R'), netOf(reference, 'A')];
  if (at === null || foot === null) return null;
  return dividerOf(graph, at, converter.output, railFrom([foot, ...converter.outputReturn], graph.links, joinsAsWire));
}

function dividerOf(graph: Graph, at: string, above: ReadonlySet<string>, below: ReadonlySet<string>): Divider | null {
  const resistors = graph.links.filter((link) => link.family === 'resistor' && otherEnd(link, at) !== null);
  const upper = resistors.filter((link) => above.has(otherEnd(link, at)!));
  const lower = resistors.filter((link) => below.has(otherEnd(link, at)!));
  const legs = resistors.filter(
    (link) => !upper.includes(link) && !lower.includes(link) && partsAt(graph, [otherEnd(link, at)!], ['negotiationChip']).length > 0,
  );
  return upper.length === 0 || lower.length === 0 ? null : { at, upper, lower, legs };
}

/** Rails and ends of the windings on the mains side beside the primary. */
function auxiliaryNets(graph: Graph, converter: Converter): Set<string> {
  const rails = new Set([...converter.plus, ...converter.minus]);
  const nets = [
    ...converter.auxiliaries.map(({ rail }) => rail),
    ...graph.windings
      .filter((one) => one.part === converter.primary?.part && one !== converter.primary)
      .flatMap(({ dot, end }) => [dot, end]),
  ];
  return new Set(nets.flatMap((net) => (net === null || rails.has(net) || graph.sideOf.get(net) === 'output' ? [] : [net])));
}

/** A Zener from the auxiliary rail to the drive of the switch, or to the transistor that takes it away. */
function byAuxiliaryZener(graph: Graph, converter: Converter, base: Regulation): Regulation | null {
  if (base.drive !== 'selfOscillating' || converter.switch === null) return null;
  const drivers = [converter.switch, ...base.limiters].flatMap((part) => netOf(part, part.kind === 'mosfet' ? 'G' : 'B') ?? []);
  const rails = new Set([...converter.plus, ...converter.minus]);
  const auxiliary = railFrom(auxiliaryNets(graph, converter), graph.links, joinsAsWire);
  for (const link of graph.links) {
    if (link.family !== 'zener') continue;
    for (const [near, far] of [
      [link.a, link.b],
      [link.b, link.a],
    ] as const) {
      const atDrive = drivers.includes(near) || findPath(graph, [near], new Set(drivers), ['resistor', 'wire'], 1, rails) !== null;
      if (atDrive && auxiliary.has(far)) return { ...base, feedback: 'auxiliaryZener', zeners: [link] };
    }
  }
  return null;
}

/** A divider from an auxiliary winding to a pin of the controller. */
function byAuxiliarySense(graph: Graph, converter: Converter, base: Regulation): Regulation | null {
  if (base.controller === null) return null;
  const above = auxiliaryNets(graph, converter);
  for (const { net } of base.controller.pins) {
    if (net === null || above.has(net) || converter.minus.has(net)) continue;
    const divider = dividerOf(graph, net, above, converter.minus);
    if (divider !== null) return { ...base, feedback: 'auxiliarySense', divider };
  }
  return null;
}

/** Not isolated: the controller senses the output through resistors or a diode. */
function byOutput(graph: Graph, converter: Converter, base: Regulation): Regulation | null {
  if (base.controller === null || converter.kind !== 'buck') return null;
  const families: readonly Family[] = ['resistor', 'diode', 'zener', 'wire'];
  for (const { net } of base.controller.pins) {
    if (net === null || converter.output.has(net) || converter.outputReturn.has(net) || net === converter.switchNode) continue;
    const avoid = new Set([...converter.outputReturn, ...(converter.switchNode === null ? [] : [converter.switchNode])]);
    const path = findPath(graph, [net], converter.output, families, 3, avoid);
    if (path === null) continue;
    const divider = dividerOf(graph, net, converter.output, new Set([...converter.outputReturn, ...avoid]));
    return { ...base, feedback: 'outputSense', divider, zeners: path.filter(({ family }) => family === 'zener') };
  }
  return null;
}

/** No feedback, but a Zener that takes what is too much: behind a dropping capacitor, or across a small output. */
function acrossOutput(graph: Graph, converter: Converter, base: Regulation): Regulation | null {
  const { output, outputReturn } = converter;
  const zeners = graph.links.filter((link) => link.family === 'zener' && outputReturn.has(link.a) && !outputReturn.has(link.b));
  const across = zeners.filter((link) => output.has(link.b) || converter.kind === 'capacitiveDropper');
  return across.length === 0 ? null : { ...base, feedback: 'zenerAcross', zeners: across };
}
