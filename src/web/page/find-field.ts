import { listOf } from '../part/new-exhibit.ts';
import type { CaseStore } from '../state/case-store.ts';
import { SHEETS } from './chapter-sheets.ts';

/** The chapter in which a place of the case is entered. */
export function chapterOfPlace(place: string, store: CaseStore): string | null {
  const [, list, id] = place.replace(/^\/case/, '').split('/');
  if (list === undefined) return null;
  if (list === 'files') return 'files';
  const kind = list === 'exhibits' ? listOf(store, 'exhibits').find((item) => item['id'] === id)?.['kind'] : undefined;
  if (kind === 'photo') return 'files';
  for (const [chapter, sheets] of Object.entries(SHEETS))
    for (const sheet of sheets) {
      if (sheet.lay === 'list' && sheet.list === list) return chapter;
      if ((sheet.lay === 'rows' || sheet.lay === 'each') && sheet.kind === kind) return chapter;
      if (sheet.lay === 'spots' && kind === 'spots') return chapter;
    }
  return ['setting', 'product', 'sample', 'examinedBy'].includes(list) ? 'sample' : null;
}

/** The entry at a place, or the nearest one above it that is on the page. */
export function findField(place: string, store: CaseStore): HTMLElement | null {
  const full = toTyped(place.startsWith('/case') ? place : `/case${place}`, store);
  for (let at = full; at.lastIndexOf('/') > 0; at = at.slice(0, at.lastIndexOf('/'))) {
    const found = document.querySelector<HTMLElement>(`[data-place="${CSS.escape(at)}"], [data-place="${CSS.escape(`${at}/v`)}"]`);
    if (found !== null)
      return found.matches('input, select, textarea') ? found : (found.querySelector<HTMLElement>('input, select') ?? found);
    const id = at.split('/').at(-1) ?? '';
    const record = document.querySelector<HTMLElement>(`#record-${CSS.escape(id)} :is(input, select)`);
    if (record !== null) return record;
  }
  return null;
}

/** A finding names a cell by column and row number; a typed table holds it by row and column number. */
function toTyped(place: string, store: CaseStore): string {
  const match = /^(.*\/table)\/columns\/([^/]+)\/(\d+)$/.exec(place);
  if (match === null) return place;
  const [, table = '', column = '', row = ''] = match;
  const columns = (store.valueAt(`${table}/columns`) ?? []) as readonly { readonly id?: string }[];
  const rows = (store.valueAt(`${table}/rows`) ?? []) as readonly { readonly id?: string }[];
  const id = rows[Number(row)]?.id;
  return id === undefined ? table : `${table}/rows/${id}/cells/${columns.findIndex((one) => one.id === column)}`;
}
