import { memo, useRef, useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { choiceWords, EXHIBIT_WORDS, LIST_WORDS } from '../../present/words/page-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import { Field } from '../field/field.tsx';
import { ListField } from '../field/list-field.tsx';
import { ObjectFields } from '../field/object-fields.tsx';
import { HeatPicture } from '../picture/heat-picture.tsx';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { addExhibit, type CaseReader, listOf } from './new-exhibit.ts';
import { ReadingTable } from './reading-table.tsx';
import { RecordTable } from './record-table.tsx';
import { SoakFit } from './soak-fit.tsx';

type Tree = Readonly<Record<string, Json>>;
type ObjectNode = Extract<FormNode, { is: 'object' }>;

/** How one kind of evidence, or one list of the case, is laid out for entry. */
export type Sheet =
  /** One row an exhibit. */
  | { readonly lay: 'rows'; readonly kind: string; readonly columns: readonly string[] }
  /** One row an item of a list of the case. */
  | { readonly lay: 'list'; readonly list: string; readonly columns: readonly string[]; readonly blank: (id: string) => Tree }
  /** One exhibit at a time, each with its table of readings if it has one. */
  | { readonly lay: 'each'; readonly kind: string }
  /** Spot readings: conditions, then a row for each place. */
  | { readonly lay: 'spots'; readonly columns: readonly string[] };

export const SheetView = memo(SheetOf);

function SheetOf({ sheet, lit }: { sheet: Sheet; lit: (id: string) => ReadonlySet<string> }) {
  switch (sheet.lay) {
    case 'rows':
      return <RowsSheet kind={sheet.kind} columns={sheet.columns} lit={lit('')} />;
    case 'list':
      return <ListSheet list={sheet.list} columns={sheet.columns} blank={sheet.blank} lit={lit('')} />;
    case 'each':
      return <EachSheet kind={sheet.kind} lit={lit} />;
    case 'spots':
      return <SpotsSheet columns={sheet.columns} lit={lit} />;
  }
}

/** The form of an exhibit of a kind; one with kinds of its own (cold, touch) by what it says. */
export function exhibitNode(form: FormNode, item: Tree): ObjectNode | null {
  const exhibits = form.is === 'object' ? form.members.find(({ key }) => key === 'exhibits')?.node : undefined;
  const variants = exhibits?.is === 'list' ? exhibits.of : undefined;
  if (variants?.is !== 'variants') return null;
  const node = variants.of[String(item['kind'])];
  const inner = node?.is === 'variants' ? node.of[String(item[node.by])] : node;
  return inner?.is === 'object' ? inner : null;
}

function listNode(form: FormNode, list: string): ObjectNode | null {
  const node = form.is === 'object' ? form.members.find(({ key }) => key === list)?.node : undefined;
  return node?.is === 'list' && node.of.is === 'object' ? node.of : null;
}

function RowsSheet({ kind, columns, lit }: { kind: string; columns: readonly string[]; lit: ReadonlySet<string> }) {
  const { store, form } = useOpenPage();
  const words = EXHIBIT_WORDS[kind] ?? { one: kind, many: kind };
  return (
    <RecordTable
      title={words.many}
      list="/case/exhibits"
      isMeant={(item) => item['kind'] === kind}
      nodeOf={(item) => exhibitNode(form.case, item)}
      columns={columns}
      add={(ADDED[kind] ?? [{ words: words.one, more: {} }]).map(({ words: one, more }) => ({
        words: one,
        make: () => focusRecord(addExhibit(store, kind, more)),
      }))}
      lit={lit}
    />
  );
}

/** Kinds whose quantity decides what can be entered: each is added as what it is. Two seconds after unplugging is when the pins are judged. */
const ADDED: Readonly<Record<string, readonly { readonly words: string; readonly more: Tree }[]>> = {
  cold: [
    ...['resistance', 'capacitance', 'insulation'].map((quantity) => ({ words: choiceWords(quantity), more: { quantity } })),
    { words: choiceWords('strength'), more: { quantity: 'strength', form: 'dc', outcome: 'held' } },
  ],
  touch: [
    ...['touchCurrentRms', 'touchCurrentPeak', 'voltageToEarth'].map((quantity) => ({ words: choiceWords(quantity), more: { quantity } })),
    { words: choiceWords('pinsAfterUnplugging'), more: { quantity: 'pinsAfterUnplugging', after: '2 s' } },
  ],
};

function ListSheet(props: { list: string; columns: readonly string[]; blank: (id: string) => Tree; lit: ReadonlySet<string> }) {
  const { list, columns, blank, lit } = props;
  const { store, form } = useOpenPage();
  const words = LIST_WORDS[list] ?? { one: list, many: list };
  const make = (): void => {
    const id = newItemId(list.slice(0, 1));
    store.set(`/case/${list}/${id}`, blank(id) as Json, newItemId('add'), { key: 'addItem', args: { list } });
    focusRecord(id);
  };
  return (
    <RecordTable
      title={words.many}
      list={`/case/${list}`}
      isMeant={() => true}
      nodeOf={() => listNode(form.case, list)}
      columns={columns}
      add={[{ words: words.one, make }]}
      lit={lit}
    />
  );
}

/** Ready for typing in the record just made. */
function focusRecord(id: string): void {
  requestAnimationFrame(() => document.querySelector<HTMLElement>(`#record-${CSS.escape(id)} :is(input, select)`)?.focus());
}

/** Ready for typing in what was just added: its first entry that can be seen. */
function focusFirst(section: { readonly current: HTMLElement | null }): void {
  requestAnimationFrame(() =>
    requestAnimationFrame(() => {
      const entries = [...(section.current?.querySelectorAll<HTMLElement>('input, select') ?? [])];
      entries.find((entry) => entry.offsetParent !== null)?.focus();
    }),
  );
}

function EachSheet({ kind, lit }: { kind: string; lit: (id: string) => ReadonlySet<string> }) {
  const { store, form } = useOpenPage();
  const { screen } = useSnapshot();
  const [chosen, setChosen] = useState<string | null>(screen[`open-${kind}`] ?? null);
  const section = useRef<HTMLElement>(null);
  const items = listOf(store, 'exhibits').filter((item) => item['kind'] === kind);
  const words = EXHIBIT_WORDS[kind] ?? { one: kind, many: kind };
  const names = tabNames(items, store);
  const current = items.find((item) => item['id'] === chosen) ?? items[0];
  const choose = (id: string): void => {
    setChosen(id);
    store.setScreen(`open-${kind}`, id);
  };
  const node = current === undefined ? null : exhibitNode(form.case, current);
  const id = String(current?.['id'] ?? '');
  const place = `/case/exhibits/${id}`;
  return (
    <section className="each" aria-label={words.many} ref={section}>
      <h3>{words.many}</h3>
      <div className="tabs">
        {items.map((item, at) => (
          <button type="button" key={String(item['id'])} aria-pressed={item === current} onClick={() => choose(String(item['id']))}>
            {names[at]}
          </button>
        ))}
        <button
          type="button"
          className="add"
          onClick={() => {
            choose(addExhibit(store, kind));
            focusFirst(section);
          }}
        >
          + {words.one}
        </button>
      </div>
      {current !== undefined && node !== null && (
        <div className={current['struck'] === undefined ? '' : 'struck'}>
          {node.members.some(({ key }) => key === 'table') ? (
            <>
              <ReadingTable key={id} place={`${place}/table`} title={`${words.one} ${id}`} lit={lit(id)} />
              {kind === 'soak' && <SoakFit key={`${id}-fit`} id={id} />}
              <ObjectFields key={`${id}-fields`} node={node} place={place} without={['table']} />
              <Columns place={place} node={node} />
            </>
          ) : kind === 'thermalPicture' ? (
            <>
              <HeatPicture key={id} id={id} node={node} />
              <ObjectFields key={`${id}-fields`} node={node} place={place} without={['regions', 'samePoints']} />
            </>
          ) : (
            <ObjectFields key={id} node={node} place={place} />
          )}
          <p className="adds">
            <button
              type="button"
              className="quiet"
              onClick={() => store.set(place, undefined, newItemId('remove'), { key: 'removeExhibit', args: { kind } })}
            >
              {CASE_PAGE.removeThis} {words.one}
            </button>
          </p>
        </div>
      )}
    </section>
  );
}

/** What each column holds: unit, role, and the column of a file it is taken from. */
function Columns({ place, node }: { place: string; node: ObjectNode }) {
  const table = node.members.find(({ key }) => key === 'table')?.node;
  const columns = table?.is === 'object' ? table.members.find(({ key }) => key === 'columns')?.node : undefined;
  const file = table?.is === 'object' ? table.members.find(({ key }) => key === 'file')?.node : undefined;
  if (columns?.is !== 'list') return null;
  return (
    <details className="inner">
      <summary>{CASE_PAGE.columnsAndFile}</summary>
      {file !== undefined && <Field node={file} place={`${place}/table/file`} label={CASE_PAGE.takenFromFile} />}
      <ListField place={`${place}/table/columns`} label={CASE_PAGE.column} node={columns} />
    </details>
  );
}

function SpotsSheet({ columns, lit }: { columns: readonly string[]; lit: (id: string) => ReadonlySet<string> }) {
  const { store, form } = useOpenPage();
  useSnapshot();
  const items = listOf(store, 'exhibits').filter((item) => item['kind'] === 'spots');
  return (
    <section className="each" aria-label={CASE_PAGE.spotReadings}>
      <h3>{CASE_PAGE.spotReadings}</h3>
      {items.map((item) => {
        const id = String(item['id']);
        const place = `/case/exhibits/${id}`;
        const node = exhibitNode(form.case, item);
        const rows = node?.members.find(({ key }) => key === 'rows')?.node;
        const row = rows?.is === 'list' && rows.of.is === 'object' ? rows.of : null;
        if (node === null || row === null) return null;
        const add = (): void => {
          const made = newItemId('s');
          const first = listOf(store, 'places')[0];
          const blank = { id: made, place: String(first?.['id'] ?? ''), value: { state: 'notLooked' }, by: 'contact' };
          store.set(`${place}/rows/${made}`, blank, newItemId('add'), { key: 'addRow', args: {} });
          focusRecord(made);
        };
        return (
          <div key={id}>
            <RecordTable
              title={id}
              list={`${place}/rows`}
              isMeant={() => true}
              nodeOf={() => row}
              columns={columns}
              add={[{ words: 'reading', make: add }]}
              lit={lit(id)}
            />
            <ObjectFields node={node} place={place} without={['rows']} />
          </div>
        );
      })}
      <p className="adds">
        <button type="button" className="quiet add" onClick={() => addExhibit(store, 'spots')}>
          {CASE_PAGE.spotReadingsUnderOtherConditions}
        </button>
      </p>
    </section>
  );
}

/** Each with a number where another before it is called the same. */
function tabNames(items: readonly Tree[], reader: CaseReader): readonly string[] {
  const seen = new Map<string, number>();
  return items.map((item) => {
    const name = tabName(item, reader);
    const number = (seen.get(name) ?? 0) + 1;
    seen.set(name, number);
    return number === 1 ? name : `${name} ${number}`;
  });
}

/** What tells one from the others: what was done, at which output where there are several, on which mains, in which direction. */
function tabName(item: Tree, reader: CaseReader): string {
  const text = (value: Json | undefined): string => {
    const held = typeof value === 'object' && value !== null ? (value as Tree)['v'] : value;
    return typeof held === 'string' ? held : '';
  };
  const under = item['under'] as Tree | undefined;
  const ports = listOf(reader, 'ports');
  const port = ports.length < 2 ? undefined : ports.find(({ id }) => id === item['port']);
  const parts = [
    text(item['what']) === '' ? '' : choiceWords(text(item['what'])),
    text(port?.['name'] ?? port?.['id']),
    text(under?.['mains']),
    item['kind'] === 'sweep' && item['order'] === 'down' ? choiceWords('down') : '',
    item['kind'] === 'event' && text(under?.['start']) === 'hot' ? choiceWords('hot') : '',
  ].filter((part) => part !== '');
  return parts.length === 0 ? String(item['id']) : parts.join(', ');
}
