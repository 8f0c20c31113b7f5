import type { CircuitPart } from '../circuit.ts';
import { type Graph, netOf, partsAt } from '../graph/graph.ts';
import type { Link, Winding } from '../graph/links.ts';
import { between, joinsAsWire, otherEnd, railFrom } from '../graph/rail.ts';
import type { MainsInput } from './mains-input.ts';
import { rectifierOf } from './mains-input.ts';

export type ConverterKind = 'flyback' | 'forward' | 'buck' | 'capacitiveDropper' | 'mainsTransformer';

/** A winding with the diode (or transistor) that rectifies it and the rail behind. */
export interface Rectified {
  readonly winding: Winding;
  readonly rectifiers: readonly string[];
  /** Resistor between rectifier and rail. */
  readonly series: readonly string[];
  /** The net behind the rectifier. */
  readonly rail: string;
  /** The other end of the winding. */
  readonly back: string;
  /** The rail lies below its return. */
  readonly negative: boolean;
  /** The rectifier blocks while the switch conducts; null where the dots do not say. */
  readonly blocksWhileOn: boolean | null;
}

export interface Converter {
  readonly kind: ConverterKind | null;
  readonly plus: ReadonlySet<string>;
  readonly minus: ReadonlySet<string>;
  readonly switch: CircuitPart | null;
  readonly switchNode: string | null;
  readonly primary: Winding | null;
  readonly sense: readonly string[];
  readonly secondaries: readonly Rectified[];
  readonly auxiliaries: readonly Rectified[];
  readonly freewheel: readonly string[];
  readonly choke: readonly string[];
  /** Nets of the output rail and of its return. */
  readonly output: ReadonlySet<string>;
  readonly outputReturn: ReadonlySet<string>;
}

const COLLECTOR = { mosfet: 'D', bipolarTransistor: 'C' } as const;
const EMITTER = { mosfet: 'S', bipolarTransistor: 'E' } as const;

/** The converter behind the mains input, from what its switch, windings and diodes join. */
export function findConverter(graph: Graph, input: MainsInput): Converter {
  const rectifier = input.rectifier;
  const [plus, minus] = rectifier === null ? [new Set<string>(), new Set<string>()] : railsBehind(graph, rectifier.plus, rectifier.minus);
  const empty: Converter = {
    kind: null,
    plus,
    minus,
    switch: null,
    switchNode: null,
    primary: null,
    sense: [],
    secondaries: [],
    auxiliaries: [],
    freewheel: [],
    choke: [],
    output: new Set(),
    outputReturn: new Set(),
  };
  if (input.mainsWinding !== null) return withOutput(graph, mainsTransformer(graph, input.mainsWinding, empty));
  if (rectifier === null) return empty;
  if (input.dropper !== null) return { ...empty, kind: 'capacitiveDropper', output: plus, outputReturn: minus };
  return withOutput(graph, switchedWinding(graph, empty) ?? buck(graph, empty) ?? empty);
}

/** Rails on both sides of fuses, limiters, and chokes that have a capacitor to the other rail behind them. */
function railsBehind(graph: Graph, plus: string, minus: string): [Set<string>, Set<string>] {
  const filtered =
    (other: () => ReadonlySet<string>) =>
    (link: Link, _from: string, to: string): boolean =>
      joinsAsWire(link) ||
      (link.family === 'inductor' && graph.links.some((one) => one.family === 'capacitor' && between(one, new Set([to]), other())));
  const up: Set<string> = railFrom([plus], graph.links, joinsAsWire);
  const down: Set<string> = railFrom([minus], graph.links, joinsAsWire);
  const upToo = railFrom(
    up,
    graph.links,
    filtered(() => down),
  );
  const downToo = railFrom(
    down,
    graph.links,
    filtered(() => upToo),
  );
  return [
    railFrom(
      upToo,
      graph.links,
      filtered(() => downToo),
    ),
    downToo,
  ];
}

function switchedWinding(graph: Graph, base: Converter): Converter | null {
  for (const winding of graph.windings) {
    const node = switchedEnd(winding, base.plus);
    if (node === null) continue;
    const found = switchAt(graph, node, base.minus);
    if (found === null) continue;
    const dotAtPlus = winding.dot !== node;
    const others = graph.windings.filter((one) => one.part === winding.part && one !== winding);
    const rectified = others.flatMap((one) => rectify(graph, one, dotAtPlus));
    const secondaries = rectified.filter((one) => feedsOutlet(graph, one));
    const auxiliaries = rectified.filter((one) => !secondaries.includes(one) && !isOutput(graph, one.rail));
    const forward = secondaries.some(({ blocksWhileOn }) => blocksWhileOn === false);
    const kind = secondaries.length === 0 ? null : forward ? 'forward' : 'flyback';
    return { ...base, kind, switch: found.part, switchNode: node, primary: winding, sense: found.sense, secondaries, auxiliaries };
  }
  return null;
}

function isOutput(graph: Graph, net: string): boolean {
  return (graph.sideOf.get(net) ?? 'mains') !== 'mains';
}

/** The rail leads to an outlet; without an outlet, it lies on the output side. */
function feedsOutlet(graph: Graph, { rail, back }: Rectified): boolean {
  const reach = railFrom([rail, back], graph.links, (link) => joinsAsWire(link) || link.family === 'inductor');
  const ends = graph.outlets.flatMap(({ plus, minus }) => [plus, minus]).flatMap((net) => net ?? []);
  return isOutput(graph, rail) || (ends.length > 0 && ends.every((net) => reach.has(net)));
}

function switchedEnd({ dot, end }: Winding, plus: ReadonlySet<string>): string | null {
  if (dot === null || end === null) return null;
  return plus.has(dot) && !plus.has(end) ? end : plus.has(end) && !plus.has(dot) ? dot : null;
}

/** A transistor from the node to the lower rail, perhaps over a resistor or a second transistor; or a controller with the switch inside. */
function switchAt(graph: Graph, node: string, minus: ReadonlySet<string>): { part: CircuitPart; sense: readonly string[] } | null {
  for (const part of partsAt(graph, [node], ['mosfet', 'bipolarTransistor'])) {
    const kind = part.kind as 'mosfet' | 'bipolarTransistor';
    if (netOf(part, COLLECTOR[kind]) !== node) continue;
    const foot = netOf(part, EMITTER[kind]);
    if (foot === null) continue;
    if (minus.has(foot)) return { part, sense: [] };
    const sense = graph.links.filter((link) => link.family === 'resistor' && between(link, new Set([foot]), minus));
    if (sense.length > 0) return { part, sense: sense.flatMap(({ parts }) => parts) };
    if (partsAt(graph, [foot], ['controller']).length > 0) return { part, sense: [] };
  }
  const [controller] = partsAt(graph, [node], ['controller']);
  if (controller === undefined) return null;
  const feet = new Set(controller.pins.flatMap(({ net }) => (net === null || net === node || minus.has(net) ? [] : [net])));
  const sense = graph.links.filter((link) => link.family === 'resistor' && between(link, feet, minus) && !hasDivider(graph, link, minus));
  return { part: controller, sense: sense.flatMap(({ parts }) => parts) };
}

/** The lower leg of a divider leads to a net that a second resistor feeds; a sense resistor does not. */
function hasDivider(graph: Graph, lower: Link, minus: ReadonlySet<string>): boolean {
  const top = minus.has(lower.a) ? lower.b : lower.a;
  return graph.links.some(
    (link) => link !== lower && (link.family === 'resistor' || link.family === 'capacitor') && otherEnd(link, top) !== null,
  );
}

/** Diodes or transistors between an end of the winding and a rail that holds a capacitor to its other end. */
function rectify(graph: Graph, winding: Winding, dotAtPlus: boolean): Rectified[] {
  const { dot, end } = winding;
  if (dot === null || end === null) return [];
  const found: Rectified[] = [];
  for (const [hot, back] of [
    [end, dot],
    [dot, end],
  ] as const) {
    const backRail = railFrom([back], graph.links, joinsAsWire);
    const holds = (net: string): boolean =>
      !backRail.has(net) &&
      graph.links.some((link) => link.family === 'capacitor' && between(link, railFrom([net], graph.links, joinsAsWire), backRail));
    for (const { link, rail, negative } of diodesAt(graph, hot)) {
      const resistor = holds(rail)
        ? null
        : (graph.links.find((one) => one.family === 'resistor' && holds(otherEnd(one, rail) ?? back)) ?? null);
      const behind = resistor === null ? rail : (otherEnd(resistor, rail) ?? rail);
      if (!holds(behind)) continue;
      const hotIsPositiveWhileOn = (hot === dot) === dotAtPlus;
      const series = resistor?.parts ?? [];
      found.push({ winding, rectifiers: link, series, rail: behind, back, negative, blocksWhileOn: hotIsPositiveWhileOn === negative });
    }
  }
  return mergeRails(found);
}

function diodesAt(graph: Graph, hot: string): { link: readonly string[]; rail: string; negative: boolean }[] {
  const diodes = graph.links.flatMap((link) => {
    const to = link.family === 'diode' ? otherEnd(link, hot) : null;
    return to === null ? [] : [{ link: link.parts, rail: to, negative: link.b === hot }];
  });
  // a transistor as rectifier conducts from source to drain, as its inner diode does
  const transistors = partsAt(graph, [hot], ['mosfet']).flatMap((part) => {
    const [drain, source] = [netOf(part, 'D'), netOf(part, 'S')];
    const to = drain === hot ? source : source === hot ? drain : null;
    return to === null ? [] : [{ link: [part.id], rail: to, negative: drain === hot }];
  });
  return [...diodes, ...transistors];
}

function mergeRails(found: readonly Rectified[]): Rectified[] {
  const merged = new Map<string, Rectified>();
  for (const one of found) {
    const key = `${one.rail} ${one.back} ${one.negative}`;
    const known = merged.get(key);
    merged.set(
      key,
      known === undefined
        ? one
        : { ...known, rectifiers: [...known.rectifiers, ...one.rectifiers], series: [...known.series, ...one.series] },
    );
  }
  return [...merged.values()];
}

/** A switch, a diode and a choke that meet at one net between the two rails, and no winding: the output is not isolated. */
function buck(graph: Graph, base: Converter): Converter | null {
  for (const link of graph.links.filter(({ family }) => family === 'diode')) {
    const up = base.minus.has(link.a) ? link.b : null;
    const down = base.plus.has(link.b) ? link.a : null;
    const node = up ?? down;
    if (node === null || base.plus.has(node) || base.minus.has(node)) continue;
    const choke = graph.links.find((one) => one.family === 'inductor' && otherEnd(one, node) !== null);
    const found = partsAt(graph, [node], ['controller', 'mosfet', 'bipolarTransistor']).find((part) =>
      part.pins.some(({ net }) => net !== null && (up !== null ? base.plus : base.minus).has(net)),
    );
    const out = choke === undefined ? null : otherEnd(choke, node);
    if (choke === undefined || found === undefined || out === null) continue;
    const output = railFrom([out], graph.links, joinsAsWire);
    return {
      ...base,
      kind: 'buck',
      switch: found,
      switchNode: node,
      freewheel: link.parts,
      choke: choke.parts,
      output: up !== null ? output : base.plus,
      outputReturn: up !== null ? base.minus : output,
    };
  }
  return null;
}

function mainsTransformer(graph: Graph, primary: Winding, base: Converter): Converter {
  const others = graph.windings.filter((one) => one.part === primary.part && one !== primary);
  for (const winding of others) {
    if (winding.dot === null || winding.end === null) continue;
    const rail = (net: string): Set<string> => railFrom([net], graph.links, joinsAsWire);
    const rectifier = rectifierOf(graph, [rail(winding.dot), rail(winding.end)]);
    if (rectifier === null) continue;
    const secondaries = [
      {
        winding,
        rectifiers: rectifier.parts,
        series: [],
        rail: rectifier.plus,
        back: rectifier.minus,
        negative: false,
        blocksWhileOn: null,
      },
    ];
    return { ...base, kind: 'mainsTransformer', primary, secondaries };
  }
  return { ...base, kind: 'mainsTransformer', primary };
}

/** Output rails: from the rectified secondary through chokes, beads, links and a series transistor. */
function withOutput(graph: Graph, converter: Converter): Converter {
  const [main] = converter.secondaries;
  if (main === undefined) return converter;
  const through = (link: Link): boolean => joinsAsWire(link) || link.family === 'inductor';
  const [rail, back] = main.negative ? [main.back, main.rail] : [main.rail, main.back];
  let output = railFrom([rail], graph.links, through);
  const outputReturn = railFrom([back], graph.links, through);
  const known = new Set(converter.secondaries.flatMap(({ rectifiers }) => rectifiers));
  for (const part of graph.circuit.parts) {
    if (part.kind !== 'mosfet' || known.has(part.id)) continue;
    const [drain, source] = [netOf(part, 'D'), netOf(part, 'S')];
    if (drain === null || source === null || outputReturn.has(drain) || outputReturn.has(source)) continue;
    if (output.has(drain) !== output.has(source)) output = railFrom([...output, drain, source], graph.links, through);
  }
  return { ...converter, output, outputReturn };
}
