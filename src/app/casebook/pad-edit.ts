import type { CircuitKind } from '../../core/circuit/circuit.ts';
import { pinsOf, windingOf } from '../../core/circuit/pin-names.ts';
import { kindOfReference } from '../../core/circuit/trace/kind-words.ts';
import { NAME } from '../../core/circuit/trace/parse-line.ts';
import { parsePin, type SaidPin } from '../../core/circuit/trace/parse-pin.ts';
import { toSlug } from '../../core/circuit/trace/to-circuit.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import type { CaseState } from './case-state.ts';
import type { Change, Json } from './change.ts';
import type { Desk } from './desk.ts';

/** A spot of solder that was clicked on a board photo, with what is known of it. Empty texts: not known. */
export interface SaidPad {
  readonly id: string;
  /** Id of the photo, and pixels of it. */
  readonly photo: string;
  readonly at: readonly [number, number];
  /** "R7 1"; "R7" for the next pin of it that has no pad yet. */
  readonly pin: string;
  /** Name of the net. */
  readonly net: string;
}

type Tree = { readonly [key: string]: Json };
type Pin = { readonly pin: string; readonly net: Json };

const NOT_FOLLOWED = { state: 'unknown', because: 'not followed' } as const;
const NOT_KNOWN = { state: 'unknown', because: 'not known what it is' } as const;

/**
 * What a pad changes in a case: parts and nets that are new join it, and the pin stands on the net, as if its line had been typed. A pad whose part
 * is not known keeps its net itself; of any other the pin tells it, so that there is one truth. A pad without a net leaves the pin on the net it
 * has.
 */
export function padChanges(state: CaseState, said: SaidPad): Change[] | Refusal {
  const named = said.pin.trim() === '' ? null : parsePin(said.pin);
  if (isRefusal(named)) return named;
  const net = findNet(state, said.net.trim());
  if (isRefusal(net)) return net;
  const place = `/case/pads/${said.id}`;
  const was = listOf(state, 'pads').find(({ id }) => id === said.id);
  const at: Tree = { id: said.id, photo: said.photo, at: [...said.at] };
  if (named === null) return [...net.made, putPad(state, place, was, { ...at, ...(net.id === null ? {} : { net: net.id }) })];
  const part = withPin(state, named, said.id, net.id);
  if (isRefusal(part)) return part;
  return [...net.made, part.change, putPad(state, place, was, { ...at, part: part.id, pin: part.pin })];
}

/** A pad that was said or let go, as one step of undo. */
export function padStep({ by, base, step, pad }: Parameters<Desk['pad']>[1]) {
  const name = 'gone' in pad ? { key: 'padGone', args: {} } : { key: 'pad', args: { pin: pad.pin } };
  const changes = ({ state }: { readonly state: CaseState }) => ('gone' in pad ? withoutPad(state, pad.gone) : padChanges(state, pad));
  return { by, base, step, name, changes };
}

/** The pad goes; what it told of parts and nets stays. */
export function withoutPad(state: CaseState, id: string): Change[] | Refusal {
  const was = listOf(state, 'pads').find((pad) => pad['id'] === id);
  return was === undefined ? refuse('no-such-pad', id, 'a pad of this case', { place: '/pads' }) : [{ at: `/case/pads/${id}`, was }];
}

function putPad(state: CaseState, at: string, was: Tree | undefined, to: Tree): Change {
  if (state.case['pads'] === undefined) return { at: '/case/pads', to: [to] };
  return was === undefined ? { at, to } : { at, was, to };
}

/** The net of that name, made where there is none. */
function findNet(state: CaseState, name: string): { id: string | null; made: Change[] } | Refusal {
  if (name === '' || name === '?') return { id: null, made: [] };
  const known = listOf(state, 'conductors');
  const found = known.find((one) => one['name'] === name) ?? known.find(({ id }) => id === name);
  if (found !== undefined) return { id: String(found['id']), made: [] };
  if (!NAME.test(name)) return refuse('not-a-net', name, 'the name of a net: one word without , : = # ? ! ( )');
  const id = freeId(toSlug(name), known);
  return { id, made: [{ at: `/case/conductors/${id}`, to: { id, name, side: { state: 'notLooked' } } }] };
}

interface Placed {
  readonly change: Change;
  readonly id: string;
  readonly pin: string;
}

/** The part with that pin on the net; a part that nobody named before is made, as its letters say. */
function withPin(state: CaseState, { ref, pin: asked }: SaidPin, pad: string, net: string | null): Placed | Refusal {
  const parts = listOf(state, 'parts');
  const known = parts.find((one) => String(one['ref']).toUpperCase() === ref);
  const kind =
    (known === undefined ? null : kindOf(known)) ?? kindOfReference(ref, [...namesOf(known), ...(asked === null ? [] : [asked])]);
  const names = kind === null ? null : pinsOf(kind);
  const pins = pinsOfPart(known, names);
  const pin = asked ?? nextPin(state, known, pins, pad);
  if (pin === null) return refuse('which-pin', ref, `a pin of it as well, such as "${ref} ${kind === 'transformer' ? 'P.1' : 'GND'}"`);
  if (names !== null && !names.includes(pin)) return refuse('no-such-pin', `${ref} ${pin}`, `one of the pins ${names.join(', ')}`);
  const winding = windingOf(pin);
  if (kind === 'transformer' && winding === null)
    return refuse('no-winding', `${ref} ${pin}`, 'an end of a winding such as "P.1", dot end 1');
  const own = kind === 'transformer' && winding !== null ? [`${winding.winding}.1`, `${winding.winding}.2`] : [pin];
  const all = [...pins, ...own.filter((one) => !pins.some((other) => other.pin === one)).map((one) => ({ pin: one, net: NOT_FOLLOWED }))];
  const placed = all.map((one) => (one.pin === pin && net !== null ? { ...one, net } : one));
  const id = known === undefined ? freeId(toSlug(ref), parts) : String(known['id']);
  const blank: Tree = { id, ref, kind: kind ?? NOT_KNOWN };
  const to: Tree = {
    ...(known ?? blank),
    ...(kind === null || (known !== undefined && kindOf(known) !== null) ? {} : { kind }),
    pins: placed,
    ...(kind === 'transformer' && winding !== null ? { windings: withWinding(known, winding.winding) } : {}),
  };
  return { change: known === undefined ? { at: `/case/parts/${id}`, to } : { at: `/case/parts/${id}`, was: known, to }, id, pin };
}

function namesOf(known: Tree | undefined): string[] {
  return Array.isArray(known?.['pins']) ? (known['pins'] as unknown as Pin[]).map(({ pin }) => pin) : [];
}

/** Pins as traced so far; of a kind with fixed pins all of them, in their order. */
function pinsOfPart(known: Tree | undefined, names: readonly string[] | null): Pin[] {
  const traced = Array.isArray(known?.['pins']) ? (known['pins'] as unknown as Pin[]) : [];
  const missing = (names ?? []).filter((name) => !traced.some(({ pin }) => pin === name));
  return [...traced, ...missing.map((pin) => ({ pin, net: NOT_FOLLOWED as Json }))];
}

/** The first pin that no other pad shows; null where none is left or the pins are not known. */
function nextPin(state: CaseState, known: Tree | undefined, pins: readonly Pin[], pad: string): string | null {
  const mine = listOf(state, 'pads').find(({ id }) => id === pad);
  if (mine !== undefined && known !== undefined && mine['part'] === known['id']) return String(mine['pin']);
  const shown = new Set(
    listOf(state, 'pads')
      .filter((one) => known !== undefined && one['part'] === known['id'])
      .map((one) => one['pin']),
  );
  return pins.find((one) => !shown.has(one.pin))?.pin ?? null;
}

function withWinding(known: Tree | undefined, name: string): Json {
  const windings = Array.isArray(known?.['windings']) ? (known['windings'] as unknown as Tree[]) : [];
  return windings.some((one) => one['name'] === name) ? windings : [...windings, { name }];
}

function kindOf(part: Tree): CircuitKind | null {
  const kind = part['kind'];
  if (typeof kind === 'string') return kind as CircuitKind;
  const read = (kind as Tree | undefined)?.['v'];
  return typeof read === 'string' ? (read as CircuitKind) : null;
}

function freeId(slug: string, taken: readonly Tree[]): string {
  let id = slug;
  for (let number = 2; taken.some((one) => one['id'] === id); number += 1) id = `${slug}-${number}`;
  return id;
}

function listOf(state: CaseState, list: string): readonly Tree[] {
  const found = state.case[list];
  return Array.isArray(found) ? (found as unknown as readonly Tree[]) : [];
}
