import { useEffect, useRef } from 'react';
import { parseNumber } from '../../core/quantity/parse-number.ts';
import { parseQuantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';

/** A block of cells on its way into a table: where it goes, its rows as typed, what was not understood. */
export interface Pasted {
  readonly row: number;
  readonly column: number;
  readonly rows: readonly (readonly string[])[];
  readonly heading: readonly string[] | null;
  readonly columns: readonly string[];
  /** Cells that are no number, counted from one. */
  readonly unread: readonly { readonly row: number; readonly text: string }[];
}

/** Tabs part cells, or semicolons, or commas where no tab stands and points are decimal marks. A first line without any number is a heading. */
export function readPasted(text: string, to: { row: number; column: number; columns: readonly string[] }): Pasted {
  const lines = text.replace(/\r\n?/g, '\n').replace(/\n+$/, '').split('\n');
  const separator = text.includes('\t') ? '\t' : text.includes(';') ? ';' : /\d\.\d/.test(text) ? ',' : '\t';
  const cells = lines.map((line) => line.split(separator).map((cell) => cell.trim()));
  const [first] = cells;
  const isHeading = first !== undefined && cells.length > 1 && first.every((cell) => !isNumber(cell));
  const rows = isHeading ? cells.slice(1) : cells;
  const unread = rows.flatMap((row, index) =>
    row.filter((cell) => cell !== '' && !isNumber(cell)).map((cell) => ({ row: index + 1, text: cell })),
  );
  return { row: to.row, column: to.column, rows, heading: isHeading ? first : null, columns: to.columns, unread };
}

function isNumber(cell: string): boolean {
  return !isRefusal(parseNumber(cell)) || !isRefusal(parseQuantity(cell));
}

const SHOWN = 4; // first rows of a preview

/** How a paste was understood, before it counts. */
export function PastePreview({ pasted, onKeep, onDrop }: { pasted: Pasted; onKeep: (block: Pasted) => void; onDrop: () => void }) {
  const keep = useRef<HTMLButtonElement>(null);
  useEffect(() => keep.current?.focus(), []);
  const width = Math.max(...pasted.rows.map((row) => row.length));
  const goes = Array.from({ length: width }, (_one, index) => pasted.columns[pasted.column + index] ?? CASE_PAGE.leftOut);
  return (
    <section className="paste" aria-label={CASE_PAGE.pastedRowsNotTakenYet}>
      <p>
        <b>{CASE_PAGE.rowsFromRow(pasted.rows.length, pasted.row + 1)}</b>{' '}
        {pasted.heading === null ? '' : CASE_PAGE.headingLeftOut(pasted.heading.join(', '))}
        {pasted.unread.length > 0 &&
          CASE_PAGE.keptAsTypedLeftOut(pasted.unread.map(({ row, text }) => CASE_PAGE.rowText(row, text)).join(', '))}
      </p>
      <table>
        <thead>
          <tr>
            {goes.map((name, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: columns of a paste are their positions
              <th key={index} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {pasted.rows.slice(0, SHOWN).map((row, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows of a paste are their positions
            <tr key={index}>
              {goes.map((_name, at) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: as above
                <td key={at}>{row[at] ?? ''}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <button type="button" ref={keep} onClick={() => onKeep(pasted)}>
        {CASE_PAGE.take} {pasted.rows.length} {CASE_PAGE.rows}
      </button>
      <button type="button" className="quiet" onClick={onDrop}>
        {CASE_PAGE.leaveThem}
      </button>
    </section>
  );
}
