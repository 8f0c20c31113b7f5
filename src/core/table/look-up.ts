import { type SiUnit, ZERO_CELSIUS_K } from '../quantity/unit.ts';
import type { Source } from '../source/source.ts';
import { combine } from '../trace/combine.ts';
import type { Chosen, Derived } from '../trace/derived.ts';
import { given } from '../trace/derived.ts';
import { uncertaintyOf } from '../trace/leaf.ts';
import type { PublishedTable } from './define-table.ts';

/** The source of one cell: its own where the table says so, else the table's. */
export function sourceOfCell(table: PublishedTable, key: string | number, column: string): Source {
  return table.cellSources?.[`${key}/${column}`] ?? table.source;
}

/** A cell by its exact key, as a constant with its source; null when the table has no such row or leaves the cell open. */
export function findCell(table: PublishedTable, key: string | number, column: string, id: string, symbol: string): Derived | null {
  const row = table.rows.find(([own]) => own === key);
  const index = Object.keys(table.columns).indexOf(column);
  const cell = row?.[index + 1];
  if (index < 0) throw new Error(`${table.id} has no column ${column}`);
  if (typeof cell !== 'number') return null;
  const { si, factor, unit } = table.columns[column]!;
  const offset = si === 'K' && unit === '°C' ? ZERO_CELSIUS_K : 0;
  return given('constant', toSi(cell, factor) + offset, si, {
    id,
    name: table.id,
    symbol,
    source: sourceOfCell(table, key, column),
    notes: [{ key: 'tableCell', args: { row: key, column } }],
  });
}

/** Like findCell, for a cell that must be there: a missing one is a defect. */
export function getCell(table: PublishedTable, key: string | number, column: string, id: string, symbol: string): Derived {
  const cell = findCell(table, key, column, id, symbol);
  if (cell === null) throw new Error(`${table.id} has no ${column} at ${key}`);
  return cell;
}

/**
 * Looks a quantity up by the rule the table allows: the first row that covers it, or a straight line between rows. Null when the key lies
 * outside the table. The row taken is the branch of the step, so that a key whose uncertainty straddles a row carries both.
 */
export function lookUp(
  table: PublishedTable,
  key: Derived,
  column: string,
  id: string,
  symbol: string,
  choices: Readonly<Record<string, Chosen>> = {},
): Derived | null {
  const spec = table.columns[column];
  if (spec === undefined) throw new Error(`${table.id} has no column ${column}`);
  if (table.key.si !== key.unit) throw new Error(`${table.id} is entered with ${table.key.si}, not ${key.unit}`);
  const { rows, moves } = columnOf(table, column);
  if (find(table, rows, key.value) === null) return null;
  const last = rows.at(-1)!.key;
  const inside = (value: number): number => Math.min(Math.max(value, 0), last);
  const rowOf = (value: number): number => rows.findIndex((row) => row.key >= inside(value));
  // a row taken whole does not move with its key, but a key of unknown doubt may belong to another row
  const still = uncertaintyOf(key.form) === null ? UNKNOWN_STAYS_UNKNOWN : 0;
  return combine(
    {
      kind: 'lookUp',
      unit: spec.si satisfies SiUnit,
      formula: null,
      symbols: { key: key.step.symbol ?? 'x' },
      moves: moves === null ? {} : { key: moves },
      compute: ({ key: value }) => toSi(find(table, rows, inside(value)) ?? Number.NaN, spec.factor),
      ...(table.lookUp === 'first row that covers'
        ? {
            sensitivity: () => ({ key: still }),
            branch: ({ key: value }: { key: number }) => `row ${rows[rowOf(value)]!.key} ${table.key.si}`,
          }
        : {}),
    },
    { key },
    {
      id,
      name: table.id,
      symbol,
      source: sourceOfCell(table, table.rows[rowOf(key.value)]![0], column),
      notes: [{ key: 'tableColumn', args: { column, row: table.rows[rowOf(key.value)]![0] } }],
    },
    choices,
  );
}

const UNKNOWN_STAYS_UNKNOWN = 1e-12; // a slope too small to move a value, enough to keep the leaf in its form

interface Column {
  /** Keys and cells in SI. */
  readonly rows: readonly { readonly key: number; readonly cell: number | null }[];
  readonly moves: 'up' | 'down' | null;
}

const COLUMNS = new WeakMap<PublishedTable, Map<string, Column>>(); // a table never changes

function columnOf(table: PublishedTable, column: string): Column {
  const columns = COLUMNS.get(table) ?? new Map<string, Column>();
  COLUMNS.set(table, columns);
  const known = columns.get(column);
  if (known !== undefined) return known;
  const index = Object.keys(table.columns).indexOf(column);
  const rows = table.rows.map((row) => ({
    key: toSi(row[0] as number, table.key.factor),
    cell: (row[index + 1] as number | null | undefined) ?? null,
  }));
  const made = { rows, moves: directionOf(rows) };
  columns.set(column, made);
  return made;
}

/** Whether the cells of a column rise or fall with the key, over the whole table; null when they do both. */
function directionOf(rows: readonly { cell: number | null }[]): 'up' | 'down' | null {
  const cells = rows.flatMap(({ cell }) => (cell === null ? [] : [cell]));
  if (cells.every((cell, index) => index === 0 || cell >= cells[index - 1]!)) return 'up';
  return cells.every((cell, index) => index === 0 || cell <= cells[index - 1]!) ? 'down' : null;
}

/** The row that covers a key exactly as printed, for the comfort line: never interpolated. */
export function coveringRow(table: PublishedTable, value: number): number | null {
  const key = table.rows.map((row) => toSi(row[0] as number, table.key.factor)).find((own) => own >= value);
  return key ?? null;
}

function find(table: PublishedTable, rows: readonly { key: number; cell: number | null }[], value: number): number | null {
  const at = rows.findIndex((row) => row.key >= value);
  const upper = rows[at];
  if (upper === undefined) return null;
  const lower = rows[at - 1];
  if (table.lookUp !== 'linear between rows' || lower === undefined || upper.key === value) return upper.cell;
  if (lower.cell === null || upper.cell === null) return null;
  return lower.cell + ((value - lower.key) * (upper.cell - lower.cell)) / (upper.key - lower.key);
}

function toSi(printed: number, factor: number): number {
  return factor >= 1 ? printed * factor : printed / Math.round(1 / factor);
}
