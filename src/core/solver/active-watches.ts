import { crossing, insideHighest } from './locate-event.ts';
import { FIRES_ABOVE } from './settle.ts';
import type { Watch } from './watch.ts';

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
  /** Every event of the step stands so little above zero at its end that it may be taken there. */
  close: boolean;
}

/** Distance from zero that counts as near for an event function, volts. House choice. */
const NEAR = 0.05;
const MOST_WATCHES = 256;

/** The watches in force, laid out for the hot loop. */
export class ActiveWatches {
  count = 0;
  readonly #row = new Int32Array(MOST_WATCHES);
  readonly #sign = new Float64Array(MOST_WATCHES);
  readonly #offset = new Float64Array(MOST_WATCHES);
  readonly #slack = new Float64Array(MOST_WATCHES);
  readonly #alsoRow = new Int32Array(MOST_WATCHES);
  readonly #alsoSign = new Float64Array(MOST_WATCHES);
  readonly #alsoOffset = new Float64Array(MOST_WATCHES);
  readonly verdict: StepVerdict = { strain: 0, hidden: false, eventAt: 2, close: true };
  /** Rows that the watches and probes need now. */
  readonly rows: number[] = [];

  /** Starts a new list; `rows` are needed whatever is watched. */
  clear(rows: readonly number[]): void {
    this.count = 0;
    this.rows.length = 0;
    this.rows.push(...rows);
  }

  #need(row: number): void {
    if (!this.rows.includes(row)) this.rows.push(row);
  }

  /** `slack`: how far above zero an event may stand when it is taken, volts. */
  add(watch: Pick<Watch, 'row' | 'sign' | 'offset' | 'also'>, slack: number): void {
    const at = this.count;
    if (at >= MOST_WATCHES) throw new Error(`more than ${MOST_WATCHES} watches`);
    this.#need(watch.row);
    if (watch.also !== undefined) this.#need(watch.also.row);
    this.#slack[at] = slack;
    this.#row[at] = watch.row;
    this.#sign[at] = watch.sign;
    // an event is what rises above the threshold, so the threshold comes off here once
    this.#offset[at] = watch.offset - FIRES_ABOVE;
    this.#alsoRow[at] = watch.also?.row ?? -1;
    this.#alsoSign[at] = watch.also?.sign ?? 0;
    this.#alsoOffset[at] = (watch.also?.offset ?? 0) - FIRES_ABOVE;
    this.count = at + 1;
  }

  /** Looks at a step of `seconds` from values v0 to v1, with their rates; `tolerance` is the share of their size and movement that may be missed. */
  judge(v0: Float64Array, rate0: Float64Array, v1: Float64Array, rate1: Float64Array, seconds: number, tolerance: number): StepVerdict {
    const { verdict } = this;
    verdict.strain = 0;
    verdict.hidden = false;
    verdict.eventAt = 2;
    verdict.close = true;
    for (let w = 0; w < this.count; w += 1) {
      const row = this.#row[w]!;
      const sign = this.#sign[w]!;
      const offset = this.#offset[w]!;
      const g0 = sign * v0[row]! + offset;
      const g1 = sign * v1[row]! + offset;
      const up = sign * rate0[row]! * seconds;
      const down = sign * rate1[row]! * seconds;
      const missed = Math.abs(g1 - g0 - 0.5 * (up + down));
      const strain = missed / (tolerance * (Math.abs(g0) + Math.abs(g1) + Math.abs(up) + Math.abs(down) + NEAR));
      if (strain > verdict.strain) verdict.strain = strain;
      if (g1 > 0) {
        const at = this.#eventAt(w, crossing(g0, up, g1, down), v0, rate0, v1, rate1, seconds);
        if (at < verdict.eventAt) verdict.eventAt = at;
        if (at <= 1 && g1 > this.#slack[w]!) verdict.close = false;
      } else if (up > 0 && down < 0 && g0 < 0 && this.#alsoRow[w]! < 0 && insideHighest(g0, up, g1, down) > 0) {
        verdict.hidden = true;
      }
    }
    return verdict;
  }

  #eventAt(
    w: number,
    first: number,
    v0: Float64Array,
    rate0: Float64Array,
    v1: Float64Array,
    rate1: Float64Array,
    seconds: number,
  ): number {
    const row = this.#alsoRow[w]!;
    if (row < 0) return first;
    const sign = this.#alsoSign[w]!;
    const g0 = sign * v0[row]! + this.#alsoOffset[w]!;
    const g1 = sign * v1[row]! + this.#alsoOffset[w]!;
    if (g1 <= 0) return 2;
    return Math.max(first, crossing(g0, sign * rate0[row]! * seconds, g1, sign * rate1[row]! * seconds));
  }
}
