import { type Refusal, refuse } from '../quantity/refusal.ts';
import type { Case, Exhibit } from './case.ts';

/** Ids that stand twice in one list, and references to things that are not there: refusals with the place and the nearest guess left to the reader. */
export function brokenReferences(one: Case): Refusal[] {
  const found: Refusal[] = [];
  const lists = ['instruments', 'days', 'events', 'ports', 'conductors', 'parts', 'places', 'exhibits', 'files'] as const;
  const ids = {} as Record<(typeof lists)[number], Set<string>>;
  for (const list of lists) {
    ids[list] = new Set();
    for (const item of one[list]) {
      if (ids[list].has(item.id)) found.push(refuse('id-twice', item.id, `an id that stands once in ${list}`, { place: `/${list}/${item.id}/id` }));
      ids[list].add(item.id);
    }
  }
  const need = (list: (typeof lists)[number], id: string | undefined, place: string): void => {
    if (id !== undefined && !ids[list].has(id)) found.push(refuse('no-such-id', id, `an id from the list "${list}"`, { place }));
  };
  for (const day of one.days) for (const [role, id] of Object.entries(day.uses)) need('instruments', id, `/days/${day.id}/uses/${role}`);
  for (const part of one.parts) {
    for (const [index, pin] of (part.pins ?? []).entries()) {
      const net = typeof pin.net === 'string' ? pin.net : 'v' in pin.net ? pin.net.v : undefined;
      need('conductors', net, `/parts/${part.id}/pins/${index}/net`);
    }
  }
  for (const place of one.places) need('parts', place.part, `/places/${place.id}/part`);
  for (const port of one.ports) for (const other of port.sharesWith ?? []) need('ports', other, `/ports/${port.id}/sharesWith`);
  for (const exhibit of one.exhibits) checkExhibit(exhibit, need);
  return found;
}

type Need = (list: 'days' | 'ports' | 'conductors' | 'parts' | 'places' | 'files', id: string | undefined, place: string) => void;

function checkExhibit(exhibit: Exhibit, need: Need): void {
  const at = `/exhibits/${exhibit.id}`;
  need('days', exhibit.day, `${at}/day`);
  for (const file of exhibit.files ?? []) need('files', file, `${at}/files`);
  for (const load of exhibit.under?.loads ?? []) need('ports', load.port, `${at}/under/loads`);
  if ('port' in exhibit) need('ports', exhibit.port, `${at}/port`);
  if ('table' in exhibit) need('files', exhibit.table.file, `${at}/table/file`);
  switch (exhibit.kind) {
    case 'distance':
      need('conductors', exhibit.from, `${at}/from`);
      need('conductors', exhibit.to, `${at}/to`);
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
      need('parts', exhibit.part, `${at}/part`);
      break;
    case 'board':
      need('parts', exhibit.fusePart, `${at}/fusePart`);
      break;
    case 'soak':
      for (const column of exhibit.table.columns) need('places', column.of, `${at}/table/columns/${column.id}/of`);
      break;
    case 'label':
    case 'body':
    case 'advertised':
    case 'sweep':
    case 'event':
    case 'ripple':
      break;
  }
}
