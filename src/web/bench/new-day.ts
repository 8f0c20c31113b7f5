import type { Change } from '../../app/casebook/change.ts';
import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { type CaseReader, listOf } from '../part/new-exhibit.ts';
import { idFromName } from '../state/place-parts.ts';
import type { Tree } from './day-order.ts';

/** What stays from one day to the next; ambient is read anew. */
const STAYS = ['mains', 'frequency', 'supply'];

/** The date of the last day at the bench; null before the first. */
export function lastDay(reader: CaseReader): string | null {
  const last = listOf(reader, 'days').at(-1);
  return last === undefined ? null : String(last['date']);
}

/** A new day with the instruments, mains and supply of the last one. */
export function beginDay(reader: CaseReader, date: string): readonly Change[] {
  const days = listOf(reader, 'days');
  const last = days.at(-1);
  const under = (last?.['under'] ?? {}) as Tree;
  const id = idFromName(
    BENCH_PAGE.day(days.length + 1),
    days.map((day) => String(day['id'])),
  );
  const kept = Object.fromEntries(STAYS.flatMap((key) => (under[key] === undefined ? [] : [[key, under[key]]])));
  return [{ at: `/case/days/${id}`, to: { id, date, uses: last?.['uses'] ?? {}, under: kept } }];
}
