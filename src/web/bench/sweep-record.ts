import type { Change, Json } from '../../app/casebook/change.ts';
import { parseQuantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { type CaseReader, listOf, newExhibit } from '../part/new-exhibit.ts';
import { newItemId } from '../state/place-parts.ts';
import type { Tree } from './day-order.ts';
import { isOpen, NOT_LOOKED } from './task/task.ts';

/** What a sweep is taken under; chosen once, before its first row. */
export interface SweepSetUp {
  readonly port: string | null;
  readonly level: string | null;
  readonly mains: string;
  readonly frequency: string;
  readonly supply: string;
  readonly sense: string;
  readonly order: string;
  readonly cover: string;
  readonly dwell: string;
}

export interface SweepRow {
  readonly id: string;
  readonly current: Json;
  readonly voltage: Json;
  readonly power: Json;
}

export function beginSweep(reader: CaseReader, set: SweepSetUp, at: string): { readonly id: string; readonly changes: readonly Change[] } {
  const { mains, frequency, supply, sense, order, dwell, cover } = set;
  return newExhibit(reader, 'sweep', {
    ...(set.port === null ? {} : { port: set.port }),
    ...(set.level === null ? {} : { level: set.level }),
    at,
    order,
    sense,
    dwell,
    under: { mains, frequency, supply, cover },
  });
}

export function findSweep(reader: CaseReader, id: string | undefined): Tree | null {
  if (id === undefined) return null;
  return listOf(reader, 'exhibits').find((item) => item['id'] === id && item['kind'] === 'sweep') ?? null;
}

/** A sweep is ended once it says how. */
export function isEnded(sweep: Tree): boolean {
  return !isOpen(sweep['ends'] as Json | undefined);
}

export function rowsOf(sweep: Tree): readonly SweepRow[] {
  const rows = ((sweep['table'] as Tree | undefined)?.['rows'] ?? []) as readonly Tree[];
  return rows.map((row) => {
    const [current = null, voltage = null, power = null] = row['cells'] as readonly Json[];
    return { id: String(row['id']), current, voltage, power };
  });
}

export function keepRow(sweep: Tree, current: string, voltage: Json, power: Json | undefined): readonly Change[] {
  const row = { id: newItemId('r'), cells: [current, voltage, power ?? NOT_LOOKED] };
  return [{ at: `/case/exhibits/${String(sweep['id'])}/table/rows/${row.id}`, to: row }];
}

export function endSweep(sweep: Tree, how: string): readonly Change[] {
  return [{ at: `/case/exhibits/${String(sweep['id'])}/ends`, was: sweep['ends'] as Json | undefined, to: how }];
}

/** The printed current of an output's level, in ampere; null where nothing is printed. */
export function claimOf(reader: CaseReader, port: string | null, level: string | null): number | null {
  const found = listOf(reader, 'ports').find((item) => item['id'] === port) ?? listOf(reader, 'ports')[0];
  const levels = (found?.['levels'] ?? []) as readonly Tree[];
  const own = levels.find((item) => item['id'] === level) ?? levels[0];
  const printed = own?.['printed'];
  const text = typeof printed === 'object' && printed !== null ? (printed as Tree)['v'] : printed;
  if (typeof text !== 'string') return null;
  const read = parseQuantity(text, 'current');
  return isRefusal(read) ? null : read.value;
}
