import { useId, useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { ENTRY_WORDS } from '../../present/words/entry-words.ts';
import { LIST_WORDS } from '../../present/words/page-words.ts';
import { HangingOn } from '../part/hanging-on.tsx';
import { idFromName, newItemId } from '../state/place-parts.ts';
import { useStanding } from '../state/use-case.ts';

type Tree = Readonly<Record<string, Json>>;

const NEW = '+new';

/** Which conductor, output, part, place ... of this case; one that is not there yet is named here and joins its list. */
export function ReferenceField(props: { place: string; label: string; shown: boolean; required: boolean; blank?: Json; list: string }) {
  const { place, label, shown, required, blank, list } = props;
  const store = useStanding();
  const id = useId();
  const [naming, setNaming] = useState(false);
  const value = store.valueAt(place);
  const items = itemsOf(list, place, (at) => store.valueAt(at));
  const draft = store.draftAt(place);
  const choose = (next: string): void => {
    if (next === NEW) setNaming(true);
    else store.set(place, next === '' ? blank : next, `reference-${place}-${next}`, { key: 'entry', args: { at: place } });
  };
  const create = (name: string): void => {
    setNaming(false);
    if (name.trim() === '') return;
    const made = idFromName(
      name,
      items.map((item) => item.id),
    );
    const item = blankItem(list, made, name.trim());
    store.change(
      [
        { at: `/case/${list}/${made}`, to: item },
        { at: place, was: value, to: made },
      ],
      newItemId('name'),
      { key: 'add', args: { at: `/case/${list}` } },
    );
  };
  return (
    <div className={`entry${draft === undefined ? '' : ' wrong'}`}>
      {shown && (
        <span className="labelled">
          <label htmlFor={id}>{label}</label>
          <HangingOn place={place} />
        </span>
      )}
      {naming ? (
        <input
          id={id}
          // biome-ignore lint/a11y/noAutofocus: the person asked for this entry with the choice just made
          autoFocus
          aria-label={ENTRY_WORDS.nameOfTheNew(LIST_WORDS[list]?.one ?? ENTRY_WORDS.item)}
          placeholder={ENTRY_WORDS.nameOfTheNew(LIST_WORDS[list]?.one ?? ENTRY_WORDS.item)}
          onBlur={(event) => create(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') event.currentTarget.blur();
            if (event.key === 'Escape') setNaming(false);
          }}
        />
      ) : (
        <select
          id={id}
          data-place={place}
          aria-label={shown ? undefined : label}
          value={typeof value === 'string' ? value : ''}
          onChange={(event) => choose(event.target.value)}
        >
          {(!required || blank !== undefined || typeof value !== 'string' || value === '') && (
            <option value="">{ENTRY_WORDS.notSaid}</option>
          )}
          {items.map((item) => (
            <option key={item.id} value={item.id}>
              {item.name}
            </option>
          ))}
          {typeof value === 'string' && value !== '' && !items.some((item) => item.id === value) && <option value={value}>{value}</option>}
          {list in BLANKS && <option value={NEW}>{ENTRY_WORDS.newOne(LIST_WORDS[list]?.one)}</option>}
        </select>
      )}
    </div>
  );
}

function itemsOf(list: string, place: string, valueAt: (at: string) => Json | undefined): { id: string; name: string }[] {
  const parent = place.slice(0, place.lastIndexOf('/'));
  const ports = valueAt('/case/ports');
  const found =
    list === 'levels'
      ? (ports as readonly Tree[] | undefined)?.find((port) => port['id'] === valueAt(`${parent}/port`))?.['levels']
      : valueAt(`/case/${list}`);
  const items = Array.isArray(found) ? (found as readonly Tree[]) : [];
  const photos = list === 'exhibits' ? items.filter((item) => item['kind'] === 'photo') : items;
  return photos.map((item) => ({ id: String(item['id']), name: nameOf(item) }));
}

function nameOf(item: Tree): string {
  for (const key of ['name', 'ref', 'of', 'path', 'voltage', 'date']) if (typeof item[key] === 'string') return item[key];
  return String(item['id']);
}

const BLANKS: Readonly<Record<string, (id: string, name: string) => Json>> = {
  conductors: (id, name) => ({ id, name, side: { state: 'notLooked' } }),
  parts: (id, ref) => ({ id, ref, kind: { state: 'notLooked' } }),
  places: (id, name) => ({ id, name }),
  ports: (id, name) => ({ id, name, kind: { state: 'notLooked' }, levels: [] }),
  instruments: (id, name) => ({ id, name, ranges: [] }),
};

function blankItem(list: string, id: string, name: string): Json {
  return BLANKS[list]?.(id, name) ?? { id };
}
