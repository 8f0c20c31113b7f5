import type { Json } from '../../app/casebook/change.ts';
import { lackingWords } from '../../present/words/draft-words.ts';
import { ENTRY_WORDS } from '../../present/words/entry-words.ts';
import { memberWords } from '../../present/words/page-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import { newItemId } from '../state/place-parts.ts';
import { useStanding } from '../state/use-case.ts';
import { blankOf } from './blank-of.ts';
import { Field } from './field.tsx';
import { ObjectFields } from './object-fields.tsx';

/** Several of a kind: items with ids one below the other, single words and references side by side. */
export function ListField({ place, label, node }: { place: string; label: string; node: Extract<FormNode, { is: 'list' }> }) {
  const store = useStanding();
  const value = store.valueAt(place);
  const items = Array.isArray(value) ? (value as readonly Json[]) : [];
  const add = (kind?: string): void => {
    const id = newItemId(
      node.keyed
        ? label
            .slice(0, 1)
            .toLowerCase()
            .replace(/[^a-z]/, 'x')
        : 'x',
    );
    const item = blankOf(node.of, id, kind);
    const step = newItemId('add');
    const name = { key: 'add', args: { at: place } };
    if (!Array.isArray(value)) store.set(place, [item], step, name);
    else if (node.keyed) store.set(`${place}/${id}`, item, step, name);
    else store.set(place, [...items, item], step, name);
  };
  const remove = (item: Json, index: number): void => {
    const name = { key: 'remove', args: { at: place } };
    const id = idOf(item);
    if (id !== null) store.set(`${place}/${id}`, undefined, newItemId('remove'), name);
    else store.set(place, items.toSpliced(index, 1), newItemId('remove'), name);
  };
  const kinds = node.of.is === 'variants' ? Object.keys(node.of.of) : [undefined];
  return (
    <fieldset className="list" data-place={place}>
      <legend>{label}</legend>
      {items.map((item, index) => {
        const id = idOf(item);
        return (
          <div className="item" key={id ?? index}>
            <div>
              <Item node={node.of} item={item} place={`${place}/${id ?? index}`} label={`${label} ${index + 1}`} />
              <Lacking place={`${place}/${id ?? index}`} />
            </div>
            <button
              type="button"
              className="quiet"
              aria-label={ENTRY_WORDS.removeOne(label, index + 1)}
              onClick={() => remove(item, index)}
            >
              {ENTRY_WORDS.removeKey}
            </button>
          </div>
        );
      })}
      {kinds.map((kind) => (
        <button type="button" className="quiet add" key={kind ?? ''} onClick={() => add(kind)}>
          + {kind === undefined ? label : memberWords(kind)}
        </button>
      ))}
    </fieldset>
  );
}

/** Of an item that does not count yet: what it still needs. */
export function Lacking({ place }: { place: string }) {
  const store = useStanding();
  const draft = store.draftAt(place);
  return draft?.item === undefined ? null : <p className="lacking">{lackingWords(draft)}</p>;
}

function Item({ node, item, place, label }: { node: FormNode; item: Json; place: string; label: string }) {
  if (node.is === 'object') return <ObjectFields node={node} place={place} />;
  if (node.is === 'variants') {
    const kind = (item as Readonly<Record<string, Json>>)[node.by];
    const of = node.of[String(kind)];
    return of?.is === 'object' ? (
      <>
        <b className="label">{memberWords(String(kind))}</b>
        <ObjectFields node={of} place={place} without={[node.by]} />
      </>
    ) : null;
  }
  return <Field node={node} place={place} label={label} shown={false} required />;
}

function idOf(item: Json): string | null {
  const own = typeof item === 'object' && item !== null && !Array.isArray(item) ? (item as Readonly<Record<string, Json>>)['id'] : null;
  return typeof own === 'string' ? own : null;
}
