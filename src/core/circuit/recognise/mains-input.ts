import type { Graph } from '../graph/graph.ts';
import { netOf } from '../graph/graph.ts';
import type { Link, Winding } from '../graph/links.ts';
import { between, joinsAsWire, otherEnd, railFrom } from '../graph/rail.ts';

export type RectifierKind = 'bridge' | 'singleDiode' | 'doubler';

export interface Rectifier {
  readonly kind: RectifierKind;
  readonly parts: readonly string[];
  readonly plus: string;
  readonly minus: string;
}

export interface MainsInput {
  /** The two poles behind fuse, limiter and choke. */
  readonly poles: readonly [ReadonlySet<string>, ReadonlySet<string>];
  readonly rectifier: Rectifier | null;
  /** Capacitor (with its resistor) that drops the mains in series. */
  readonly dropper: Link | null;
  /** Winding straight across the mains. */
  readonly mainsWinding: Winding | null;
  /** Resistors in series with a pole. */
  readonly series: readonly string[];
}

/** What stands between the plug and the first direct voltage; null without an inlet of two poles. */
export function findMainsInput(graph: Graph): MainsInput | null {
  const [one, two] = graph.inlet;
  if (one === undefined || two === undefined || one === two) return null;
  const strict = (link: Link): boolean => joinsAsWire(link) || link.family === 'inductor';
  const pole = (start: string): Set<string> => railFrom([start], graph.links, strict);
  const poles: [Set<string>, Set<string>] = [pole(one), pole(two)];
  const none = { poles, rectifier: null, dropper: null, mainsWinding: null, series: [] };

  const mainsWinding = graph.windings.find(
    ({ dot, end }) =>
      dot !== null && end !== null && ((poles[0].has(dot) && poles[1].has(end)) || (poles[1].has(dot) && poles[0].has(end))),
  );
  if (mainsWinding !== undefined) return { ...none, mainsWinding };
  const plain = rectifierOf(graph, poles);
  if (plain !== null) return { ...none, rectifier: plain };

  return throughSeries(graph, none, MOST_IN_SERIES) ?? none;
}

const MOST_IN_SERIES = 2; // a resistor and the dropping capacitor, or a resistor in each pole
const IN_SERIES: readonly Link['family'][] = ['resistor', 'capacitor', 'resistorCapacitor'];

/** A rectifier behind a resistor or a capacitor in series with one pole, or behind two of them. */
function throughSeries(graph: Graph, input: MainsInput, more: number): MainsInput | null {
  const steps = input.poles.flatMap((own, index) => {
    const other = input.poles[index === 0 ? 1 : 0]!;
    return graph.links.flatMap((link) => {
      const behind = IN_SERIES.includes(link.family) ? reachedThrough(link, own, other) : null;
      if (behind === null || (input.dropper !== null && link.family !== 'resistor') || bleedsCapacitor(graph, link)) return [];
      const drops = link.family !== 'resistor';
      const rail = railFrom([behind, ...(drops ? [] : own)], graph.links, (one) => joinsAsWire(one) || one.family === 'inductor');
      const poles: readonly [ReadonlySet<string>, ReadonlySet<string>] = index === 0 ? [rail, other] : [other, rail];
      const step: MainsInput = { ...input, poles, ...(drops ? { dropper: link } : { series: [...input.series, ...link.parts] }) };
      return [{ step, rectifier: rectifierOf(graph, poles) ?? (drops ? zenerRectifier(graph, rail, other) : null), own, other, index }];
    });
  });
  for (const { step, rectifier, own, other, index } of steps) {
    if (rectifier === null) continue;
    const before: MainsInput['poles'] = index === 0 ? [own, other] : [other, own];
    // behind a dropping capacitor the voltage is not the mains any more: the poles end before it
    return { ...step, rectifier, poles: step.dropper === null ? step.poles : before };
  }
  if (more <= 1) return null;
  for (const { step } of steps) {
    const found = throughSeries(graph, step, more - 1);
    if (found !== null) return found;
  }
  return null;
}

/** A resistor across a capacitor discharges it; the current takes the capacitor. */
function bleedsCapacitor(graph: Graph, link: Link): boolean {
  const ends = new Set([link.a, link.b]);
  return link.family === 'resistor' && graph.links.some((one) => one.family === 'capacitor' && ends.has(one.a) && ends.has(one.b));
}

function reachedThrough(link: Link, own: ReadonlySet<string>, other: ReadonlySet<string>): string | null {
  const from = own.has(link.a) ? link.a : own.has(link.b) ? link.b : null;
  const to = from === null ? null : otherEnd(link, from);
  return to === null || own.has(to) || other.has(to) ? null : to;
}

/** A rectifier fed by these two poles; the fullest one that the diodes allow. */
export function rectifierOf(graph: Graph, [one, two]: readonly [ReadonlySet<string>, ReadonlySet<string>]): Rectifier | null {
  for (const part of graph.circuit.parts) {
    if (part.kind !== 'bridgeRectifier') continue;
    const [first, second, plus, minus] = ['~1', '~2', '+', '-'].map((pin) => netOf(part, pin));
    if (first == null || second == null || plus == null || minus == null) continue;
    if ((one.has(first) && two.has(second)) || (two.has(first) && one.has(second)))
      return { kind: 'bridge', parts: [part.id], plus, minus };
  }
  const diodes = graph.links.filter(({ family }) => family === 'diode');
  const from = (pole: ReadonlySet<string>): Link[] => diodes.filter(({ a, b }) => pole.has(a) && !one.has(b) && !two.has(b));
  const into = (pole: ReadonlySet<string>): Link[] => diodes.filter(({ a, b }) => pole.has(b) && !one.has(a) && !two.has(a));
  for (const up of from(one))
    for (const upToo of from(two))
      for (const down of into(one))
        for (const downToo of into(two))
          if (up.b === upToo.b && down.a === downToo.a && up.b !== down.a)
            return { kind: 'bridge', parts: [up, upToo, down, downToo].flatMap(({ parts }) => parts), plus: up.b, minus: down.a };
  const capacitorTo = (net: string, to: ReadonlySet<string>): boolean =>
    graph.links.some((link) => link.family === 'capacitor' && between(link, new Set([net]), to));
  for (const [pole, other] of [
    [one, two],
    [two, one],
  ] as const) {
    for (const up of from(pole))
      for (const down of into(pole))
        if (capacitorTo(up.b, other) && capacitorTo(down.a, other) && up.b !== down.a)
          return { kind: 'doubler', parts: [...up.parts, ...down.parts], plus: up.b, minus: down.a };
  }
  for (const [pole, other] of [
    [one, two],
    [two, one],
  ] as const) {
    for (const up of from(pole)) {
      for (const back of into(other))
        if (capacitorTo(up.b, new Set([back.a])))
          return { kind: 'singleDiode', parts: [...up.parts, ...back.parts], plus: up.b, minus: back.a };
      if (capacitorTo(up.b, other)) return { kind: 'singleDiode', parts: up.parts, plus: up.b, minus: first(other, graph, up.b) };
    }
    for (const down of into(pole))
      if (capacitorTo(down.a, other)) return { kind: 'singleDiode', parts: down.parts, plus: first(other, graph, down.a), minus: down.a };
  }
  return null;
}

/** The net of the pole on which the capacitor stands. */
function first(pole: ReadonlySet<string>, graph: Graph, from: string): string {
  const link = graph.links.find((one) => one.family === 'capacitor' && between(one, new Set([from]), pole));
  return (link === undefined ? null : otherEnd(link, from)) ?? [...pole].sort()[0]!;
}

/** Behind a dropping capacitor a Zener often takes one half-wave and a diode hands the other on. */
function zenerRectifier(graph: Graph, rail: ReadonlySet<string>, other: ReadonlySet<string>): Rectifier | null {
  const zener = graph.links.find((link) => link.family === 'zener' && between(link, rail, other));
  const diode = graph.links.find(({ family, a, b }) => family === 'diode' && rail.has(a) && !other.has(b));
  if (zener === undefined || diode === undefined || !rail.has(zener.b)) return null;
  return { kind: 'singleDiode', parts: diode.parts, plus: diode.b, minus: zener.a };
}
