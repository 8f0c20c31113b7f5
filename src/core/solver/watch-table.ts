import type { Watch } from './watch.ts';

/** How far above zero a watch must stand to count, volts: above rounding, below anything that matters. House choice. */
export const FIRES_ABOVE = 1e-7;

/** Watches laid out for the hot loop: the n-th of each list belongs to the n-th watch; rows are places in the values looked at. */
export interface WatchTable {
  readonly count: number;
  readonly place: Int32Array;
  readonly sign: Float64Array;
  readonly offset: Float64Array;
  /** How far above zero an event may stand when it is taken, volts. */
  readonly slack: Float64Array;
  /** Place of the second row, -1 without one. */
  readonly alsoPlace: Int32Array;
  readonly alsoSign: Float64Array;
  readonly alsoOffset: Float64Array;
}

export function tableOf(
  watches: readonly Pick<Watch, 'row' | 'sign' | 'offset' | 'also'>[],
  placeOf: (row: number) => number,
  slack: number,
): WatchTable {
  return {
    count: watches.length,
    place: Int32Array.from(watches, ({ row }) => placeOf(row)),
    sign: Float64Array.from(watches, ({ sign }) => sign),
    // an event is what rises above the threshold, so the threshold comes off here once
    offset: Float64Array.from(watches, ({ offset }) => offset - FIRES_ABOVE),
    slack: new Float64Array(watches.length).fill(slack),
    alsoPlace: Int32Array.from(watches, ({ also }) => (also === undefined ? -1 : placeOf(also.row))),
    alsoSign: Float64Array.from(watches, ({ also }) => also?.sign ?? 0),
    alsoOffset: Float64Array.from(watches, ({ also }) => (also?.offset ?? 0) - FIRES_ABOVE),
  };
}

/** How far a watch stands above its threshold; with a second row, the lesser of both. */
export function firedBy(table: WatchTable, w: number, values: Float64Array): number {
  const first = table.sign[w]! * values[table.place[w]!]! + table.offset[w]!;
  const also = table.alsoPlace[w]!;
  if (first <= 0 || also < 0) return first;
  return Math.min(first, table.alsoSign[w]! * values[also]! + table.alsoOffset[w]!);
}

/** The watch that has fired most, or with `inOrder` the first that has; -1 when none has. */
export function fired(table: WatchTable, values: Float64Array, inOrder: boolean): number {
  let worst = -1;
  let most = 0;
  for (let w = 0; w < table.count; w += 1) {
    const by = firedBy(table, w, values);
    if (by <= most) continue;
    most = by;
    worst = w;
    if (inOrder) break;
  }
  return worst;
}
