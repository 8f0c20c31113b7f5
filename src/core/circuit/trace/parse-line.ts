import { isRefusal, type Refusal, refuse } from '../../quantity/refusal.ts';
import { CIRCUIT_SIDES, type CircuitKind, type CircuitSide } from '../circuit.ts';
import { pinsOf } from '../pin-names.ts';
import { KIND_WORDS, kindOfReference, kindOfWord } from './kind-words.ts';
import { lineFromRow } from './line-from-row.ts';
import { readWords } from './read-words.ts';
import type { TracedPart } from './traced.ts';

export type Line = { readonly part: TracedPart } | { readonly side: CircuitSide; readonly nets: readonly string[] };

/** A net or a pin: no blank and none of the signs that lines use for themselves. */
export const NAME = /^[^\s,:=#?!()]{1,40}$/;
/** As boards print it: letters, a number, perhaps one letter. */
export const REFERENCE = /^[A-Za-z]+\d+[A-Za-z]?$/;
const KIND_BEHIND = /^(\S+?)\s*\(([^)]*)\)\s*(.*)$/;
const WINDING = /^[A-Za-z][A-Za-z0-9]{0,7}$/;
const TURNS = /^(?:\?|\d+(?:[.,]\d+)?)$/;
const EXAMPLE = 'a line such as "R7 4k7: FB, OUT-" or "mains: L, N"';

type Pin = { readonly name: string | null; readonly net: string | null };

/** One line of a trace; null for an empty one. A remark begins with "#". Grammar: docs/circuit-lines.md. */
export function parseLine(text: string): Line | Refusal | null {
  const typed = (text.split('#', 1)[0] ?? '').trim();
  if (typed === '') return null;
  const line = typed.includes('\t') && !typed.includes(':') ? lineFromRow(typed) : typed;
  if (line === null) return null;
  const colon = line.indexOf(':');
  if (colon < 0) return refuse('no-colon', line, EXAMPLE);
  const head = line.slice(0, colon).trim();
  const pins = parsePins(line.slice(colon + 1));
  if (isRefusal(pins)) return pins;
  const side = CIRCUIT_SIDES.find((one) => one === head.toLowerCase());
  if (side === undefined) return parsePart(head, pins);
  const nets = pins.flatMap(({ name, net }) => (name === null && net !== null ? [net] : []));
  return nets.length < pins.length ? refuse('no-net', line, 'names of nets behind a side, such as "mains: L, N"') : { side, nets };
}

function parsePins(text: string): Pin[] | Refusal {
  const pins: Pin[] = [];
  for (const piece of text.split(',')) {
    const [left = '', right, more] = piece.split('=').map((one) => one.trim());
    const net = right ?? left;
    if (more !== undefined || (net !== '?' && !NAME.test(net)) || (right !== undefined && !NAME.test(left)))
      return refuse('not-a-net', piece.trim(), 'the name of a net, or "?" where the track could not be followed');
    pins.push({ name: right === undefined ? null : left, net: net === '?' ? null : net });
  }
  return pins;
}

function parsePart(head: string, pins: readonly Pin[]): Line | Refusal {
  const bracket = KIND_BEHIND.exec(head);
  const [first = '', ...behind] = (bracket === null ? head : `${bracket[1]} ${bracket[3]}`).trim().split(/\s+/);
  if (!REFERENCE.test(first)) return refuse('not-a-reference', first, 'letters and a number as the board prints them, such as R7');
  const ref = first.toUpperCase();
  const crosses = behind.includes('!');
  const words = behind.filter((word) => word !== '!');
  const said = bracket === null ? null : kindOfWord((bracket[2] ?? '').trim());
  if (bracket !== null && said === null && bracket[2]?.trim() !== '?')
    return refuse('unknown-kind', bracket[2] ?? '', `one of ${Object.values(KIND_WORDS).join(', ')}, or ?`);
  const names = pins.flatMap(({ name }) => name ?? []);
  const kind = bracket === null ? kindOfReference(ref, names) : said;
  const empty = { value: null, voltage: null, current: null, power: null, tolerance: null, safetyClass: null, marking: null };
  if (kind === 'transformer') {
    const winding = parseWinding(ref, words, pins);
    return isRefusal(winding) ? winding : { part: { ...empty, ref, kind, crosses, ...winding } };
  }
  const placed = placePins(kind, pins);
  if (isRefusal(placed)) return placed;
  const read = readWords(kind, words);
  return isRefusal(read) ? read : { part: { ref, kind, crosses, ...read, pins: placed, windings: [] } };
}

/** Pins by name, or by their order; a pin that the kind does not have, and a net that two unnamed pins share, are refused. */
function placePins(kind: CircuitKind | null, pins: readonly Pin[]): TracedPart['pins'] | Refusal {
  const known = kind === null ? null : pinsOf(kind);
  const placed: { pin: string; net: string | null }[] = [];
  for (const [index, { name, net }] of pins.entries()) {
    const pin = name ?? (known === null ? String(index + 1) : known[index]);
    if (pin === undefined) return refuse('too-many-pins', net ?? '?', `at most ${known?.length} pins`);
    if (known !== null && !known.includes(pin)) return refuse('no-such-pin', pin, `one of the pins ${known.join(', ')}`);
    if (placed.some((other) => other.pin === pin)) return refuse('pin-twice', pin, 'each pin once');
    const same = net === null ? undefined : placed.findIndex((other) => other.net === net);
    if (same !== undefined && same >= 0 && (name === null || pins[same]?.name === null))
      return refuse('net-twice', net ?? '', 'a net once in a part; name both pins where they are really joined, such as "R=X, K=X"');
    placed.push({ pin, net });
  }
  if (known !== null && known.length === 2 && placed.length < 2)
    return refuse('too-few-pins', placed[0]?.net ?? '?', 'two pins; "?" where a track could not be followed');
  return placed;
}

function parseWinding(ref: string, words: readonly string[], pins: readonly Pin[]): Pick<TracedPart, 'pins' | 'windings'> | Refusal {
  const [name = '', turns, more] = words;
  if (!WINDING.test(name)) return refuse('no-winding', name, `the name of a winding, dot end first, such as "${ref} P 72: HV+, DRAIN"`);
  if (more !== undefined || (turns !== undefined && !TURNS.test(turns)))
    return refuse('not-turns', more ?? turns ?? '', 'turns such as 72, or "?"');
  const [dot, end] = pins;
  if (pins.length !== 2 || dot === undefined || end === undefined || pins.some((pin) => pin.name !== null))
    return refuse('not-two-ends', pins.map(({ net }) => net ?? '?').join(', '), 'the two ends of the winding, dot end first');
  if (dot.net !== null && dot.net === end.net) return refuse('net-twice', dot.net, 'two nets: a winding on one net is shorted');
  return {
    pins: [
      { pin: `${name}.1`, net: dot.net },
      { pin: `${name}.2`, net: end.net },
    ],
    windings: [{ name, turns: turns ?? null }],
  };
}
