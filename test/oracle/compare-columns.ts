import type { PublishedTable } from '../../src/core/table/define-table.ts';
import type { Column } from './column.ts';

/** One column of a table of the project in the form of a copy. */
export function columnOf(table: PublishedTable, name: string): Column {
  const index = Object.keys(table.columns).indexOf(name);
  if (index < 0) throw new Error(`${table.id} has no column ${name}`);
  return table.rows.map((row) => {
    const [key, cell] = [row[0], row[index + 1]];
    if (typeof key !== 'number' || typeof cell !== 'number') throw new Error(`${table.id}, ${name}: ${key} is no pair of numbers`);
    return [key, cell] as const;
  });
}

/** Whether a sequence never falls. */
export function neverFalls(values: readonly number[]): boolean {
  return values.every((value, index) => index === 0 || value >= values[index - 1]!);
}
