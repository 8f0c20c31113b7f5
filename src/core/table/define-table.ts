import type { SiUnit } from '../quantity/unit.ts';
import type { Source } from '../source/source.ts';

/**
 * A published table as data, with numbers as printed (millimetres stay millimetres) and the factor to SI beside the unit.
 * Cells that a source does not give are null: unknown stays unknown.
 */
export interface PublishedTable {
  /** Equals the path of its file: "iec-62368-1/2018/creepage". */
  readonly id: string;
  readonly title: string;
  readonly source: Source;
  /** Which reading of the table is allowed. */
  readonly lookUp: 'first row that covers' | 'linear between rows' | 'exact key';
  readonly key: { readonly name: string; readonly unit: string; readonly si: SiUnit | 'word'; readonly factor: number };
  readonly columns: Readonly<Record<string, { readonly unit: string; readonly si: SiUnit; readonly factor: number }>>;
  /** Key, then the cells in the order of `columns`. */
  readonly rows: readonly (readonly [key: number | string, ...cells: (number | null)[]])[];
  /** Where single cells are better or worse sourced than the table: "key/column" to source. */
  readonly cellSources?: Readonly<Record<string, Source>>;
}

export function defineTable<const T extends PublishedTable>(table: T): T {
  return table;
}
