import type { Json } from '../../app/casebook/change.ts';
import { type CaseReader, listOf } from '../part/new-exhibit.ts';
import type { At } from '../stage/stage-view.ts';

type Tree = Readonly<Record<string, Json>>;

/** A pad with what it stands for, as the photo shows it. */
export interface TracedPad {
  readonly id: string;
  readonly photo: string;
  /** Pixels of its own photo. */
  readonly at: At;
  /** "R7 1"; empty where the part is not known. */
  readonly pin: string;
  readonly net: string | null;
}

/** A net that has pads: its number, from 1, gives it colour and dashes and stands at each pad, so that no colour has to be told from another. */
export interface TracedNet {
  readonly id: string;
  readonly name: string;
  readonly number: number;
  readonly pads: number;
}

export interface Traced {
  readonly pads: readonly TracedPad[];
  readonly nets: readonly TracedNet[];
}

/** Pads and nets out of the lists of the case: a pin tells the net of its pad. */
export function readTraced(reader: CaseReader): Traced {
  const parts = new Map(listOf(reader, 'parts').map((part) => [String(part['id']), part]));
  const pads = listOf(reader, 'pads').map((pad) => toPad(pad, parts));
  const used = [...new Set(pads.flatMap(({ net }) => net ?? []))];
  const names = new Map(listOf(reader, 'conductors').map((one) => [String(one['id']), String(one['name'])]));
  const nets = used.map((id, index) => ({
    id,
    name: names.get(id) ?? id,
    number: index + 1,
    pads: pads.filter(({ net }) => net === id).length,
  }));
  return { pads, nets };
}

function toPad(pad: Tree, parts: ReadonlyMap<string, Tree>): TracedPad {
  const [x = 0, y = 0] = pad['at'] as readonly number[];
  const part = parts.get(String(pad['part']));
  const pin = pad['pin'] === undefined ? '' : String(pad['pin']);
  const own = part === undefined ? pad['net'] : netOf(part, pin);
  return {
    id: String(pad['id']),
    photo: String(pad['photo']),
    at: { x, y },
    pin: part === undefined ? '' : `${String(part['ref'])} ${pin}`,
    net: readId(own),
  };
}

function netOf(part: Tree, pin: string): Json | undefined {
  const pins = Array.isArray(part['pins']) ? (part['pins'] as readonly Tree[]) : [];
  return pins.find((one) => one['pin'] === pin)?.['net'];
}

function readId(value: Json | undefined): string | null {
  if (typeof value === 'string') return value;
  const read = typeof value === 'object' && value !== null ? (value as Tree)['v'] : undefined;
  return typeof read === 'string' ? read : null;
}

/** "N1", "N2": the first name of that kind that no conductor has. */
export function freeNetName(reader: CaseReader): string {
  const taken = new Set(listOf(reader, 'conductors').map((one) => String(one['name'])));
  for (let number = 1; ; number += 1) if (!taken.has(`N${number}`)) return `N${number}`;
}
