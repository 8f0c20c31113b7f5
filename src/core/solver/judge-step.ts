import { crossing, insideHighest } from './locate-event.ts';
import type { WatchTable } from './watch-table.ts';

/** How the event functions behave over one trial step. */
export interface StepVerdict {
  /**
   * How far the straight line through both rates misses the value at the end, over what may be missed. Above one the step is too long to
   * trust; it grows with the third power of the step.
   */
  strain: number;
  /** An event function rises above zero and falls back inside the step. */
  hidden: boolean;
  /** Share of the step at which the first event happens; above 1 when none does. */
  eventAt: number;
  /** Share of the step by which the first event may be passed before it stands above its slack, by the straight line to the end. */
  room: number;
  /** Every event of the step stands so little above zero at its end that it may be taken there. */
  close: boolean;
}
export const newVerdict = (): StepVerdict => ({ strain: 0, hidden: false, eventAt: 2, room: 0, close: true });

export function clearVerdict(verdict: StepVerdict): void {
  verdict.strain = 0;
  verdict.hidden = false;
  verdict.eventAt = 2;
  verdict.room = 0;
  verdict.close = true;
}

/** Distance from zero that counts as near for an event function, volts. House choice. */
const NEAR = 0.05;

/**
 * Adds to the verdict what a table of watches says of a step of `seconds` from the values v0 to v1. Their rates stand `half` places
 * further on; `tolerance` is the share of their size and movement that may be missed.
 */
export function judgeStep(
  verdict: StepVerdict,
  table: WatchTable,
  v0: Float64Array,
  v1: Float64Array,
  half: number,
  seconds: number,
  tolerance: number,
): void {
  const { count, place, sign, offset, slack, alsoPlace } = table;
  let { strain } = verdict;
  for (let w = 0; w < count; w += 1) {
    const at = place[w]!;
    const way = sign[w]!;
    const off = offset[w]!;
    const g0 = way * v0[at]! + off;
    const g1 = way * v1[at]! + off;
    const up = way * v0[at + half]! * seconds;
    const down = way * v1[at + half]! * seconds;
    const missed = Math.abs(g1 - g0 - 0.5 * (up + down));
    const allowed = tolerance * (Math.abs(g0) + Math.abs(g1) + Math.abs(up) + Math.abs(down) + NEAR);
    if (missed > strain * allowed) strain = missed / allowed;
    if (g1 > 0) {
      const when = bothAt(table, w, crossing(g0, up, g1, down), v0, v1, half, seconds);
      if (when < verdict.eventAt) {
        verdict.eventAt = when;
        verdict.room = ((1 - when) * slack[w]!) / g1;
      }
      if (when <= 1 && g1 > slack[w]!) verdict.close = false;
    } else if (up > 0 && down < 0 && g0 < 0 && alsoPlace[w]! < 0 && insideHighest(g0, up, g1, down) > 0) {
      verdict.hidden = true;
    }
  }
  verdict.strain = strain;
}

function bothAt(
  { alsoPlace, alsoSign, alsoOffset }: WatchTable,
  w: number,
  first: number,
  v0: Float64Array,
  v1: Float64Array,
  half: number,
  seconds: number,
): number {
  const at = alsoPlace[w]!;
  if (at < 0) return first;
  const way = alsoSign[w]!;
  const g0 = way * v0[at]! + alsoOffset[w]!;
  const g1 = way * v1[at]! + alsoOffset[w]!;
  if (g1 <= 0) return 2;
  return Math.max(first, crossing(g0, way * v0[at + half]! * seconds, g1, way * v1[at + half]! * seconds));
}
