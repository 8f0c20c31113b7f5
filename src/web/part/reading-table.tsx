import { type ClipboardEvent, type KeyboardEvent, useRef, useState } from 'react';
import type { Change, Json } from '../../app/casebook/change.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { choiceWords } from '../../present/words/page-words.ts';
import { Entry } from '../field/entry.tsx';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { HangingOn } from './hanging-on.tsx';
import { type Pasted, PastePreview, readPasted } from './paste-preview.tsx';

interface Column {
  readonly id: string;
  readonly unit?: string;
  readonly role?: string;
  readonly of?: string;
}
interface Row {
  readonly id: string;
  readonly cells: readonly Json[];
  readonly struck?: string;
}

const NOT_LOOKED: Json = { state: 'notLooked' };
const SIGNS: Readonly<Record<string, string>> = {
  outputCurrent: 'I',
  outputVoltage: 'V',
  inputPower: CASE_PAGE.pIn,
  mains: 'mains',
  temperature: 'T',
  ambient: 'ambient',
};

/**
 * Rows of readings at the speed of the bench: a number, Tab, a number, Enter. The last row is always empty and ready; a paste from a
 * spreadsheet is shown as it was understood before it counts.
 */
export function ReadingTable({ place, title, lit }: { place: string; title: string; lit: ReadonlySet<string> }) {
  const { store } = useOpenPage();
  const { view } = useSnapshot();
  const [ghost, setGhost] = useState(() => newItemId('r'));
  const [pasted, setPasted] = useState<Pasted | null>(null);
  const step = useRef('');
  const table = useRef<HTMLTableElement>(null);
  const columns = (store.valueAt(`${place}/columns`) ?? []) as unknown as readonly Column[];
  const rows = (store.valueAt(`${place}/rows`) ?? []) as unknown as readonly Row[];
  const bare = place.replace(/^\/case/, '');
  const troubles = view.warnings.filter(({ at }) => at.startsWith(`${bare}/`));
  const troubleAt = (column: Column, index: number): string | undefined =>
    troubles.find(
      ({ at }) =>
        at === `${bare}/columns/${column.id}/${index}` || at === `${bare}/rows/${rows[index]?.id}/cells/${columns.indexOf(column)}`,
    )?.words;

  const focus = (row: number, column: number): void => {
    const input = table.current?.querySelector<HTMLInputElement>(`input[data-row="${row}"][data-column="${column}"]`);
    input?.focus();
    input?.select();
  };
  const write = (index: number, column: number, text: string): void => {
    const row = rows[index];
    if (step.current === '') step.current = newItemId('cell');
    const to: Json = text === '' ? NOT_LOOKED : text;
    const name = { key: 'cell', args: { row: index + 1, column: columns[column]?.id ?? '' } };
    if (row !== undefined) store.set(`${place}/rows/${row.id}/cells/${column}`, to, step.current, name);
    else {
      const cells = columns.map((_one, at) => (at === column ? to : NOT_LOOKED));
      const made: Json = { id: ghost, cells };
      if (store.valueAt(`${place}/rows`) === undefined) store.set(`${place}/rows`, [made], step.current, name);
      else store.set(`${place}/rows/${ghost}`, made, step.current, name);
      setGhost(newItemId('r'));
    }
  };
  const setState = (index: number, column: number, sign: string): void => {
    const state = sign === '-' ? 'absent' : 'unknown';
    const row = rows[index];
    if (row !== undefined)
      store.set(`${place}/rows/${row.id}/cells/${column}`, { state, because: '' }, newItemId('state'), { key: 'state', args: { state } });
  };
  const keys = (event: KeyboardEvent<HTMLInputElement>, index: number, column: number): void => {
    const text = event.currentTarget.value;
    if (event.key === 'Enter') {
      event.preventDefault();
      if (text === '?' || text === '-') setState(index, column, text);
      focus(index + 1, 0);
    } else if (event.key === 'ArrowDown') focus(index + 1, column);
    else if (event.key === 'ArrowUp') focus(Math.max(0, index - 1), column);
    else if (event.key === 'd' && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      const above = rows[index - 1]?.cells[column];
      if (typeof above === 'string') write(index, column, above);
    }
  };
  const paste = (event: ClipboardEvent<HTMLInputElement>, index: number, column: number): void => {
    const text = event.clipboardData.getData('text/plain');
    if (!/[\t\n]/.test(text.trim())) return;
    event.preventDefault();
    setPasted(readPasted(text, { row: index, column, columns: columns.map(labelOf) }));
  };
  const keepPasted = (block: Pasted): void => {
    const changes: Change[] = [];
    const fresh: Json[] = [];
    block.rows.forEach((cells, offset) => {
      const row = rows[block.row + offset];
      const placed = columns.map((_one, at) => cells[at - block.column] ?? null);
      if (row === undefined)
        fresh.push({ id: newItemId('r'), cells: placed.map((cell) => (cell === null || cell === '' ? NOT_LOOKED : cell)) });
      else
        placed.forEach((cell, at) => {
          if (cell !== null && cell !== '') changes.push({ at: `${place}/rows/${row.id}/cells/${at}`, was: row.cells[at], to: cell });
        });
    });
    const had = store.valueAt(`${place}/rows`);
    if (had === undefined) changes.push({ at: `${place}/rows`, to: fresh });
    else for (const row of fresh) changes.push({ at: `${place}/rows/${(row as { id: string }).id}`, to: row });
    store.change(changes, newItemId('paste'), { key: 'paste', args: { rows: block.rows.length } });
    setPasted(null);
    focus(block.row + block.rows.length, 0);
  };
  const remove = (row: Row, index: number): void => {
    store.set(`${place}/rows/${row.id}`, undefined, newItemId('row'), { key: 'removeRow', args: { row: index + 1 } });
  };
  const shown: readonly Row[] = [...rows, { id: ghost, cells: [] }];
  const file = store.valueAt(`${place}/file`);
  if (typeof file === 'string')
    return <TakenRows file={file} exhibit={bare.split('/')[2] ?? ''} columns={columns} lit={lit} title={title} />;
  return (
    <div className="readings">
      <table ref={table} className="read" aria-label={title}>
        <thead>
          <tr>
            <th scope="col">{CASE_PAGE.rowHeading}</th>
            {columns.map((column) => (
              <th scope="col" key={column.id}>
                {labelOf(column)}
              </th>
            ))}
            <th scope="col">
              <span className="for-ears">{CASE_PAGE.remove}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map((row, index) => (
            <tr key={row.id} className={[lit.has(String(index)) ? 'used' : '', row.struck === undefined ? '' : 'struck'].join(' ').trim()}>
              <td>
                {index + 1}
                {columns.map((column) => (
                  <HangingOn key={column.id} place={`${place}/columns/${column.id}/${index}`} />
                ))}
              </td>
              {columns.map((column, at) => (
                <td key={column.id} className={troubleAt(column, index) === undefined ? '' : 'bad'}>
                  <input
                    data-row={index}
                    data-column={at}
                    data-place={`${place}/rows/${row.id}/cells/${at}`}
                    aria-label={CASE_PAGE.rowColumn(index + 1, labelOf(column))}
                    aria-invalid={troubleAt(column, index) !== undefined}
                    inputMode="decimal"
                    autoComplete="off"
                    value={cellText(row.cells[at])}
                    onChange={(event) => write(index, at, event.target.value)}
                    onKeyDown={(event) => keys(event, index, at)}
                    onPaste={(event) => paste(event, index, at)}
                    onFocus={() => {
                      step.current = '';
                    }}
                  />
                </td>
              ))}
              <td>
                {index < rows.length && (
                  <button
                    type="button"
                    className="quiet"
                    tabIndex={-1}
                    aria-label={CASE_PAGE.removeRow(index + 1)}
                    onClick={() => remove(row, index)}
                  >
                    ×
                  </button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {statesOf(rows).map(({ row, at, index, state }) => (
        <Entry
          key={`${row}-${at}`}
          place={`${place}/rows/${row}/cells/${at}/because`}
          label={CASE_PAGE.rowBecause(index + 1, labelOf(columns[at] ?? { id: '' }), state)}
          required
        />
      ))}
      {pasted === null ? null : <PastePreview pasted={pasted} onKeep={keepPasted} onDrop={() => setPasted(null)} />}
      <div className="said" role="status">
        {troubles.map(({ at, where, words }) => (
          <p className="err" key={at}>
            <b>{where}:</b> {words}
          </p>
        ))}
      </div>
      <p className="hint">
        {CASE_PAGE.pasteRowsFromASpreadsheet} <kbd>{CASE_PAGE.tab}</kbd> {CASE_PAGE.nextCell} <kbd>{CASE_PAGE.enter}</kbd>{' '}
        {CASE_PAGE.nextRow} <kbd>{CASE_PAGE.ctrlD}</kbd> {CASE_PAGE.copiesTheCellAbove} <kbd>?</kbd> {CASE_PAGE.unknown} <kbd>-</kbd>{' '}
        {CASE_PAGE.absent}
      </p>
    </div>
  );
}

/** Rows that come from a file are read there, not typed: shown as they were judged. */
function TakenRows(props: { file: string; exhibit: string; columns: readonly Column[]; lit: ReadonlySet<string>; title: string }) {
  const { file, exhibit, columns, lit, title } = props;
  const { view } = useSnapshot();
  const rows = view.taken.find((one) => one.exhibit === exhibit)?.rows ?? [];
  const has = (index: number): boolean => rows.some((row) => row[index] !== '');
  const shown = ['outputCurrent', 'outputVoltage', 'inputPower'].flatMap((role, index) => {
    const column = columns.find((one) => one.role === role);
    return has(index) ? [{ index, name: column === undefined ? (SIGNS[role] ?? role) : labelOf(column) }] : [];
  });
  return (
    <div className="readings">
      {rows.length > 0 && (
        <table className="read taken" aria-label={title}>
          <thead>
            <tr>
              <th scope="col">{CASE_PAGE.rowHeading}</th>
              {shown.map(({ name }) => (
                <th scope="col" key={name}>
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows of a file are their positions
              <tr key={index} className={lit.has(String(index)) ? 'used' : ''}>
                <td>{index + 1}</td>
                {shown.map(({ index: at, name }) => (
                  <td key={name}>{row[at]}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p className="hint">
        {CASE_PAGE.readFromTheFile}
        {file}
        {CASE_PAGE.inSiUnitsItsBytes}
        {rows.length === 0 && CASE_PAGE.itsRowsShowOnceOutput}
      </p>
    </div>
  );
}

/** Cells that are no reading and say why. */
function statesOf(rows: readonly Row[]): { row: string; at: number; index: number; state: string }[] {
  return rows.flatMap(({ id, cells }, index) =>
    cells.flatMap((cell, at) => {
      const state = typeof cell === 'object' && cell !== null ? (cell as Readonly<Record<string, Json>>)['state'] : undefined;
      return state === 'absent' || state === 'unknown' ? [{ row: id, at, index, state }] : [];
    }),
  );
}

function labelOf(column: Column): string {
  const sign = SIGNS[column.role ?? ''] ?? (column.role === undefined ? column.id : choiceWords(column.role));
  const about = column.of === undefined ? '' : ` ${column.of}`;
  return column.unit === undefined ? `${sign}${about}` : `${sign}${about}, ${column.unit}`;
}

function cellText(cell: Json | undefined): string {
  if (cell === undefined) return '';
  if (typeof cell === 'string') return cell;
  const state = (cell as Readonly<Record<string, Json>>)['state'];
  return state === 'absent' ? '-' : state === 'unknown' ? '?' : '';
}
