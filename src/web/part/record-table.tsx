import { Fragment, useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { memberWords } from '../../present/words/page-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import { Field } from '../field/field.tsx';
import { Lacking } from '../field/list-field.tsx';
import { ObjectFields } from '../field/object-fields.tsx';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { HangingOn } from './hanging-on.tsx';

type Tree = Readonly<Record<string, Json>>;
type ObjectNode = Extract<FormNode, { is: 'object' }>;

export interface RecordTableProps {
  readonly title: string;
  /** The list that holds the records, and which of its items are meant. */
  readonly list: string;
  readonly isMeant: (item: Tree) => boolean;
  readonly nodeOf: (item: Tree) => ObjectNode | null;
  /** Members shown as columns, by path; the others open below a row. */
  readonly columns: readonly string[];
  readonly headings?: Readonly<Record<string, string>>;
  readonly add: readonly { readonly words: string; readonly make: () => void }[];
  readonly lit: ReadonlySet<string>;
}

/** Records of one kind, one a row, each cell a place of the case; everything else of a record opens below it. */
export function RecordTable(props: RecordTableProps) {
  const { title, list, isMeant, nodeOf, columns, headings = {}, add, lit } = props;
  const { store } = useOpenPage();
  useSnapshot();
  const [open, setOpen] = useState<string | null>(null);
  const all = store.valueAt(list);
  const items = (Array.isArray(all) ? (all as readonly Tree[]) : []).filter(isMeant);
  const remove = (id: string): void => store.set(`${list}/${id}`, undefined, newItemId('remove'), { key: 'remove', args: { at: list } });
  return (
    <section className="records" aria-label={title}>
      <h3>{title}</h3>
      {items.length > 0 && (
        <div className="scroll">
          <table>
            <thead>
              <tr>
                {columns.map((key) => (
                  <th key={key} scope="col">
                    {headings[key] ?? memberWords(key.split('/').at(-1) ?? key)}
                  </th>
                ))}
                <th scope="col">
                  <span className="for-ears">{CASE_PAGE.more}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {items.map((item) => {
                const id = String(item['id']);
                const node = nodeOf(item);
                const place = `${list}/${id}`;
                return (
                  <Fragment key={id}>
                    <tr className={`${lit.has(id) ? 'used' : ''}${item['struck'] === undefined ? '' : ' struck'}`} id={`record-${id}`}>
                      {columns.map((key) => {
                        const cell = node === null ? null : memberAt(node, key.split('/'));
                        return (
                          <td key={key}>
                            {cell !== null && <HangingOn place={`${place}/${key}`} />}
                            {cell === null ? null : (
                              <Field
                                node={cell.node}
                                place={`${place}/${key}`}
                                label={`${title}, ${id}: ${memberWords(key)}`}
                                shown={false}
                                required={cell.required}
                              />
                            )}
                          </td>
                        );
                      })}
                      <td className="acts">
                        <Lacking place={place} />
                        <button
                          type="button"
                          className="quiet"
                          aria-expanded={open === id}
                          aria-label={CASE_PAGE.moreAbout(id)}
                          onClick={() => setOpen(open === id ? null : id)}
                        >
                          {open === id ? '−' : '⋯'}
                        </button>
                        <button type="button" className="quiet" aria-label={CASE_PAGE.removeOne(id)} onClick={() => remove(id)}>
                          ×
                        </button>
                      </td>
                    </tr>
                    {open === id && node !== null && (
                      <tr className="below">
                        <td colSpan={columns.length + 1}>
                          <ObjectFields node={node} place={place} without={columns} />
                        </td>
                      </tr>
                    )}
                  </Fragment>
                );
              })}
            </tbody>
          </table>
        </div>
      )}
      <p className="adds">
        {add.map(({ words, make }) => (
          <button type="button" className="quiet add" key={words} onClick={make}>
            + {words}
          </button>
        ))}
      </p>
    </section>
  );
}

function memberAt(node: FormNode, path: readonly string[]): { node: FormNode; required: boolean } | null {
  const [key, ...rest] = path;
  if (node.is !== 'object') return null;
  const member = node.members.find((one) => one.key === key);
  if (member === undefined) return null;
  return rest.length === 0 ? member : memberAt(member.node, rest);
}
