import type { Watch } from './watch.ts';

/** How far above zero a watch must stand to count, volts: above rounding, below anything that matters. House choice. */
export const FIRES_ABOVE = 1e-7;

/** Watches laid out for the hot loop: the n-th of each list belongs to the n-th watch; rows are places in the values looked at. */
export interface WatchTable {
  count: number;
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

type Laid = Pick<Watch, 'row' | 'sign' | 'offset' | 'also'>;

/** Room for so many watches, all with one slack. */
export function emptyTable(most: number, slack: number): WatchTable {
  return {
    count: 0,
    place: new Int32Array(most),
    sign: new Float64Array(most),
    offset: new Float64Array(most),
    slack: new Float64Array(most).fill(slack),
    alsoPlace: new Int32Array(most),
    alsoSign: new Float64Array(most),
    alsoOffset: new Float64Array(most),
  };
}

/** Puts a watch at the end of a table; `placeOf` is where a row stands among the values looked at. */
export function addWatch(table: WatchTable, { row, sign, offset, also }: Laid, placeOf: (row: number) => number): void {
  const at = table.count;
  if (at >= table.place.length) throw new Error(`more than ${at} watches`);
  table.place[at] = placeOf(row);
  table.sign[at] = sign;
  // an event is what rises above the threshold, so the threshold comes off here once
  table.offset[at] = offset - FIRES_ABOVE;
  table.alsoPlace[at] = also === undefined ? -1 : placeOf(also.row);
  table.alsoSign[at] = also?.sign ?? 0;
  table.alsoOffset[at] = (also?.offset ?? 0) - FIRES_ABOVE;
  table.count = at + 1;
}

export function tableOf(watches: readonly Laid[], placeOf: (row: number) => number, slack: number): WatchTable {
  const table = emptyTable(watches.length, slack);
  for (const watch of watches) addWatch(table, watch, placeOf);
  return table;
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
