import { CAPACITORS, type Circuit, type CircuitKind, type CircuitPart, RESISTORS } from '../circuit.ts';
import { windingOf } from '../pin-names.ts';

/** What a two-ended thing does between its ends. */
export type Family = 'wire' | 'resistor' | 'capacitor' | 'inductor' | 'diode' | 'zener' | 'led' | 'varistor' | 'resistorCapacitor';

/**
 * Something with two ends: a part, one half of a choke, or a row of resistors that share nets with nothing else (a resistor split in two is
 * still one resistor). A diode, Zener or LED runs from anode `a` to cathode `b`; an electrolytic capacitor from plus to minus.
 */
export interface Link {
  readonly parts: readonly string[];
  readonly family: Family;
  readonly a: string;
  readonly b: string;
  readonly polarised: boolean;
}

export interface Winding {
  readonly part: string;
  readonly name: string;
  readonly dot: string | null;
  readonly end: string | null;
}

/** Fuses, limiters, beads of wire: in series they join two nets to one rail. */
const WIRES: ReadonlySet<CircuitKind | null> = new Set(['fuse', 'fusibleResistor', 'ntc', 'jumper']);

export function familyOf(kind: CircuitKind | null): Family | null {
  if (WIRES.has(kind)) return 'wire';
  if (RESISTORS.has(kind)) return 'resistor';
  if (CAPACITORS.has(kind)) return 'capacitor';
  if (kind === 'inductor') return 'inductor';
  if (kind === 'diode' || kind === 'zener' || kind === 'led' || kind === 'varistor') return kind;
  return null;
}

/** Two-ended things of a circuit, rows of resistors joined, then resistor and capacitor in a row joined. `kept` are nets that stay visible. */
export function linksOf(circuit: Circuit, kept: ReadonlySet<string>): Link[] {
  const use = new Map<string, number>();
  for (const { pins } of circuit.parts) for (const { net } of pins) if (net !== null) use.set(net, (use.get(net) ?? 0) + 1);
  const inner = (net: string): boolean => use.get(net) === 2 && !kept.has(net);
  const links = circuit.parts.flatMap(linksOfPart);
  const rows = joinRows(links, 'resistor', 'resistor', 'resistor', inner);
  return joinRows(rows, 'resistor', 'capacitor', 'resistorCapacitor', inner);
}

function linksOfPart(part: CircuitPart): Link[] {
  const at = (pin: string): string | null => part.pins.find((one) => one.pin === pin)?.net ?? null;
  const link = (family: Family, one: string | null, two: string | null): Link[] =>
    one === null || two === null || one === two
      ? []
      : [{ parts: [part.id], family, a: one, b: two, polarised: part.kind === 'electrolyticCapacitor' }];
  if (part.kind === 'commonModeChoke') return [...link('wire', at('1'), at('2')), ...link('wire', at('3'), at('4'))];
  const family = familyOf(part.kind);
  if (family === null) return [];
  const [one, two] =
    part.kind === 'electrolyticCapacitor'
      ? [at('+'), at('-')]
      : part.pins.some(({ pin }) => pin === 'A')
        ? [at('A'), at('K')]
        : [part.pins[0]?.net ?? null, part.pins[1]?.net ?? null];
  return part.kind === 'electrolyticCapacitor' && one === null && two === null
    ? link(family, part.pins[0]?.net ?? null, part.pins[1]?.net ?? null).map((own) => ({ ...own, polarised: false }))
    : link(family, one, two);
}

/** Joins two links of the families named wherever they meet at a net that nothing else touches, until nothing more can be joined. */
function joinRows(links: readonly Link[], one: Family, two: Family, into: Family, inner: (net: string) => boolean): Link[] {
  let all = [...links];
  for (;;) {
    const pair = findPair(all, one, two, inner);
    if (pair === null) return all;
    const [first, second, net] = pair;
    const joined: Link = {
      parts: [...first.parts, ...second.parts].sort(),
      family: into,
      a: first.a === net ? first.b : first.a,
      b: second.a === net ? second.b : second.a,
      polarised: false,
    };
    all = [...all.filter((link) => link !== first && link !== second), joined];
  }
}

function findPair(all: readonly Link[], one: Family, two: Family, inner: (net: string) => boolean): [Link, Link, string] | null {
  const at = new Map<string, Link[]>();
  for (const link of all)
    if (link.family === one || link.family === two)
      for (const net of [link.a, link.b]) if (inner(net)) at.set(net, [...(at.get(net) ?? []), link]);
  for (const [net, [first, second]] of at) {
    if (first === undefined || second === undefined || first === second) continue;
    const ends = (link: Link): string => (link.a === net ? link.b : link.a);
    if (ends(first) === ends(second)) continue;
    if (first.family === one && second.family === two) return [first, second, net];
    if (first.family === two && second.family === one) return [second, first, net];
  }
  return null;
}

export function windingsOf(circuit: Circuit): Winding[] {
  return circuit.parts
    .filter(({ kind }) => kind === 'transformer')
    .flatMap((part) => {
      const names = [...new Set(part.pins.flatMap(({ pin }) => windingOf(pin)?.winding ?? []))];
      const at = (pin: string): string | null => part.pins.find((one) => one.pin === pin)?.net ?? null;
      return names.map((name) => ({ part: part.id, name, dot: at(`${name}.1`), end: at(`${name}.2`) }));
    });
}
