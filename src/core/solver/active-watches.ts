import { crossing, insideHighest } from './locate-event.ts';
import { FIRES_ABOVE } from './settle.ts';
import type { Watch } from './watch.ts';

/** How the event functions behave over one trial step. */
export interface StepVerdict {
  /** Too long to trust: halve it. */
  rough: boolean;
  /** Smooth enough for a longer one. */
  mayGrow: boolean;
  /** Share of the step at which the first event happens; above 1 when none does. */
  eventAt: number;
}

/** Distance from zero that counts as near for an event function, volts. House choice. */
const NEAR = 0.05;
/** How much rougher than wanted a step may be before it is taken back, and how much smoother before the next one is longer. */
const TAKE_BACK = 4;
const GROW = 0.3;
const MOST_WATCHES = 256;

/** The watches in force, laid out for the hot loop. */
export class ActiveWatches {
  count = 0;
  readonly #row = new Int32Array(MOST_WATCHES);
  readonly #sign = new Float64Array(MOST_WATCHES);
  readonly #offset = new Float64Array(MOST_WATCHES);
  readonly #alsoRow = new Int32Array(MOST_WATCHES);
  readonly #alsoSign = new Float64Array(MOST_WATCHES);
  readonly #alsoOffset = new Float64Array(MOST_WATCHES);
  readonly verdict: StepVerdict = { rough: false, mayGrow: true, eventAt: 2 };

  clear(): void {
    this.count = 0;
  }

  add(watch: Pick<Watch, 'row' | 'sign' | 'offset' | 'also'>): void {
    const at = this.count;
    if (at >= MOST_WATCHES) throw new Error(`more than ${MOST_WATCHES} watches`);
    this.#row[at] = watch.row;
    this.#sign[at] = watch.sign;
    this.#offset[at] = watch.offset;
    this.#alsoRow[at] = watch.also?.row ?? -1;
    this.#alsoSign[at] = watch.also?.sign ?? 0;
    this.#alsoOffset[at] = watch.also?.offset ?? 0;
    this.count = at + 1;
  }

  /** Looks at a step of `seconds` from values v0 to v1, with their rates; `tolerance` is the share of the distance to an event that may be missed. */
  judge(v0: Float64Array, rate0: Float64Array, v1: Float64Array, rate1: Float64Array, seconds: number, tolerance: number): StepVerdict {
    const { verdict } = this;
    verdict.rough = false;
    verdict.mayGrow = true;
    verdict.eventAt = 2;
    for (let w = 0; w < this.count; w += 1) {
      const row = this.#row[w]!;
      const sign = this.#sign[w]!;
      const offset = this.#offset[w]!;
      const g0 = sign * v0[row]! + offset;
      const g1 = sign * v1[row]! + offset;
      const up = sign * rate0[row]! * seconds;
      const down = sign * rate1[row]! * seconds;
      const missed = Math.abs(g1 - g0 - 0.5 * (up + down));
      const scale = tolerance * (Math.abs(g0) + Math.abs(g1) + NEAR);
      if (missed > TAKE_BACK * scale) {
        verdict.rough = true;
        return verdict;
      }
      if (missed > GROW * scale) verdict.mayGrow = false;
      if (g1 > FIRES_ABOVE) {
        const at = this.#eventAt(w, crossing(g0, up, g1, down), v0, rate0, v1, rate1, seconds);
        if (at < verdict.eventAt) verdict.eventAt = at;
      } else if (up > 0 && down < 0 && g0 < 0 && this.#alsoRow[w]! < 0 && insideHighest(g0, up, g1, down) > FIRES_ABOVE) {
        verdict.rough = true;
        return verdict;
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
    if (g1 <= FIRES_ABOVE) return 2;
    return Math.max(first, crossing(g0, sign * rate0[row]! * seconds, g1, sign * rate1[row]! * seconds));
  }
}
