import { type Refusal, refuse } from '../quantity/refusal.ts';
import type { Case, Exhibit } from './case.ts';
import { type LoadMention, type Mention, mentionsIn } from './mentions.ts';
import type { Value } from './value.ts';

/** Ids that stand twice in one list, and references to things that are not there: refusals with the place and the nearest guess left to the reader. */
export function brokenReferences(one: Case, walkInto: WalkInto = walk): Refusal[] {
  const found: Refusal[] = [];
  const lists = ['instruments', 'days', 'events', 'ports', 'conductors', 'parts', 'places', 'exhibits', 'files'] as const;
  const ids = {} as Record<(typeof lists)[number], Set<string>>;
  for (const list of lists) {
    ids[list] = new Set();
    for (const item of one[list]) {
      if (ids[list].has(item.id))
        found.push(refuse('id-twice', item.id, `an id that stands once in ${list}`, { place: `/${list}/${item.id}/id` }));
      ids[list].add(item.id);
    }
  }
  const photos = new Set(one.exhibits.flatMap(({ id, kind }) => (kind === 'photo' ? [id] : [])));
  const need = (list: (typeof lists)[number], id: string | undefined, place: string): void => {
    if (id !== undefined && !ids[list].has(id)) found.push(refuse('no-such-id', id, `an id from the list "${list}"`, { place }));
  };
  for (const day of one.days) for (const [role, id] of Object.entries(day.uses)) need('instruments', id, `/days/${day.id}/uses/${role}`);
  const needLevel = (port: string, level: string | undefined, place: string): void => {
    const levels = one.ports.find(({ id }) => id === port)?.levels;
    if (level !== undefined && levels !== undefined && !levels.some(({ id }) => id === level))
      found.push(refuse('no-such-id', level, `an id of a level of the port "${port}"`, { place }));
  };
  for (const day of one.days) for (const lead of day.leads ?? []) need('ports', lead.port, `/days/${day.id}/leads/${lead.id}/port`);
  const walked = walkEach(one, walkInto);
  for (const { mentions } of walked)
    for (const { list, id, place } of mentions) {
      if (list !== 'photos') need(list, id, place);
      else if (!photos.has(id)) found.push(refuse('no-such-id', id, 'an id of an exhibit of the kind "photo"', { place }));
    }
  for (const { loads } of walked) for (const { port, level, place } of loads) needLevel(port, level, place);
  for (const part of one.parts) {
    for (const [index, pin] of (part.pins ?? []).entries()) {
      const net = typeof pin.net === 'string' ? pin.net : 'v' in pin.net ? pin.net.v : undefined;
      need('conductors', net, `/parts/${part.id}/pins/${index}/net`);
    }
  }
  const pads = new Set<string>();
  for (const pad of one.pads ?? []) {
    if (pads.has(pad.id)) found.push(refuse('id-twice', pad.id, 'an id that stands once in pads', { place: `/pads/${pad.id}/id` }));
    pads.add(pad.id);
    need('parts', pad.part, `/pads/${pad.id}/part`);
    need('conductors', pad.net, `/pads/${pad.id}/net`);
  }
  for (const place of one.places) need('parts', place.part, `/places/${place.id}/part`);
  for (const port of one.ports) for (const other of port.sharesWith ?? []) need('ports', other, `/ports/${port.id}/sharesWith`);
  for (const exhibit of one.exhibits) {
    checkExhibit(exhibit, need, (id, place) =>
      found.push(refuse('same-ends', id, 'another conductor than the one it starts from', { place })),
    );
    const named =
      exhibit.kind === 'sweep' || exhibit.kind === 'ripple' || exhibit.kind === 'earthSwing' || exhibit.kind === 'event' ? exhibit : null;
    if (named?.port !== undefined) needLevel(named.port, named.level, `/exhibits/${exhibit.id}/level`);
  }
  for (const { twice } of walked)
    for (const { place, id } of twice) found.push(refuse('id-twice', id, 'an id that stands once in its list', { place }));
  return found;
}

/** What a member of a case or an item of one of its lists names, and ids that stand twice in lists inside of it. */
export interface Walked {
  readonly mentions: readonly Mention[];
  readonly loads: readonly LoadMention[];
  readonly twice: readonly { readonly place: string; readonly id: string }[];
}

/** `walk`, or one that remembers what it walked before. */
export type WalkInto = (part: object, place: string, depth: number) => Walked;

export function walk(part: object, place: string, depth: number): Walked {
  return { ...mentionsIn(part, place), twice: twiceBelow(part, place, depth) };
}

const NOTHING: Walked = { mentions: [], loads: [], twice: [] };
const IN_DOCUMENT = 1; // how deep members of the document lie, for `twiceBelow`
const IN_LIST = 2;

function walkEach(one: Case, walkInto: WalkInto): Walked[] {
  return Object.entries(one).flatMap(([key, member]: [string, unknown]) => {
    if (!Array.isArray(member)) return isObject(member) ? [walkInto(member, `/${key}`, IN_DOCUMENT)] : [];
    return member.map((item: unknown, index) =>
      isObject(item) ? walkInto(item, `/${key}/${'id' in item ? String(item.id) : index}`, IN_LIST) : NOTHING,
    );
  });
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}

/** Ids that stand twice in any list inside the lists of the case: rows, levels, columns, marks. */
function twiceBelow(value: unknown, place: string, depth = 0): { place: string; id: string }[] {
  if (typeof value !== 'object' || value === null) return [];
  if (!Array.isArray(value)) return Object.entries(value).flatMap(([key, item]) => twiceBelow(item, `${place}/${key}`, depth + 1));
  const seen = new Set<string>();
  return value.flatMap((item: unknown, index) => {
    const id = typeof item === 'object' && item !== null && 'id' in item && typeof item.id === 'string' ? item.id : null;
    const twice = id !== null && seen.has(id) && depth > 1 ? [{ place: `${place}/${id}/id`, id }] : []; // the top lists are checked already
    if (id !== null) seen.add(id);
    return [...twice, ...twiceBelow(item, `${place}/${id ?? index}`, depth + 1)];
  });
}

function findText(value: Value | undefined): string | undefined {
  return typeof value === 'string' ? value : value !== undefined && 'v' in value ? value.v : undefined;
}

function findList(value: Value<string[]> | undefined): readonly string[] {
  return Array.isArray(value) ? value : value !== undefined && 'v' in value ? value.v : [];
}

type Need = (list: 'days' | 'ports' | 'conductors' | 'parts' | 'places' | 'files', id: string | undefined, place: string) => void;

function checkExhibit(exhibit: Exhibit, need: Need, refuseSame: (id: string, place: string) => void): void {
  const at = `/exhibits/${exhibit.id}`;
  need('days', exhibit.day, `${at}/day`);
  for (const file of exhibit.files ?? []) need('files', file, `${at}/files`);
  if ('port' in exhibit) need('ports', exhibit.port, `${at}/port`);
  if ('table' in exhibit) need('files', exhibit.table.file, `${at}/table/file`);
  switch (exhibit.kind) {
    case 'distance':
      need('conductors', exhibit.from, `${at}/from`);
      need('conductors', exhibit.to, `${at}/to`);
      if (exhibit.from === exhibit.to) refuseSame(exhibit.to, `${at}/to`);
      break;
    case 'residual':
      need('parts', exhibit.across, `${at}/across`);
      break;
    case 'touch':
      need('conductors', exhibit.from, `${at}/from`);
      break;
    case 'cold':
    case 'workingVoltage':
      for (const end of exhibit.between) need('conductors', end, `${at}/between`);
      break;
    case 'spots':
      for (const row of exhibit.rows) need('places', row.place, `${at}/rows/${row.id}/place`);
      break;
    case 'thermalPicture':
    case 'capture':
    case 'photo':
      need('files', exhibit.file, `${at}/file`);
      break;
    case 'stack':
      for (const key of ['part', 'switchPart', 'rectifierPart'] as const) need('parts', exhibit[key], `${at}/${key}`);
      need('conductors', exhibit.coreConductor, `${at}/coreConductor`);
      break;
    case 'board':
      need('parts', exhibit.fusePart, `${at}/fusePart`);
      need('parts', findText(exhibit.inrush), `${at}/inrush`);
      for (const list of ['bulk', 'bleeders', 'suppression'] as const)
        for (const id of findList(exhibit[list])) need('parts', id, `${at}/${list}`);
      break;
    case 'soak':
      for (const column of exhibit.table.columns) need('places', column.of, `${at}/table/columns/${column.id}/of`);
      break;
    case 'sweep':
      for (const other of exhibit.others ?? []) need('ports', other.port, `${at}/others/${other.id}/port`);
      break;
    case 'label':
    case 'body':
    case 'advertised':
    case 'event':
    case 'ripple':
    case 'earthSwing':
      break;
  }
}
