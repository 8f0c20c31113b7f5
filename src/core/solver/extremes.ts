import { hermite } from './locate-event.ts';
import { PROBE_SHARE } from './step-settings.ts';

/** Least and most of each probe, also inside a step, by the cubic through both ends. */
export class Extremes {
  readonly least: Float64Array;
  readonly most: Float64Array;
  /** Time spent above the level, since the run began, seconds. */
  aboveS = 0;
  readonly #above: { readonly index: number; readonly level: number } | null;
  readonly #count: number;

  /** Probes stand first among the values looked at; `above`: a level that one of them is held against. */
  constructor(count: number, above: { readonly index: number; readonly level: number } | null) {
    this.#above = above;
    this.#count = count;
    this.least = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
    this.most = new Float64Array(count).fill(Number.NEGATIVE_INFINITY);
  }

  restart(): void {
    this.least.fill(Number.POSITIVE_INFINITY);
    this.most.fill(Number.NEGATIVE_INFINITY);
  }

  /** A point: what stands after a change of region. */
  see(values: Float64Array): void {
    for (let index = 0; index < this.#count; index += 1) this.#put(index, values[index]!);
  }

  /**
   * How roughly a trial of `seconds` follows the probes: what the straight line through both rates misses, over `tolerance` of the range
   * that a probe has covered. A probe that cannot get beyond its least and most asks for nothing.
   */
  strain(v0: Float64Array, v1: Float64Array, half: number, seconds: number, tolerance: number): number {
    let worst = 0;
    for (let index = 0; index < this.#count; index += 1) {
      const from = v0[index]!;
      const to = v1[index]!;
      const up = v0[index + half]! * seconds;
      const down = v1[index + half]! * seconds;
      const missed = Math.abs(to - from - 0.5 * (up + down));
      const least = this.least[index]!;
      const most = this.most[index]!;
      const inside = up > 0 === down > 0 || up === down ? from : hermite(up / (up - down), from, up, to, down);
      if (Math.max(from, to, inside) + missed <= most && Math.min(from, to, inside) - missed >= least) continue;
      const range = Math.max(most - least, Math.abs(to - from), PROBE_SHARE * (Math.abs(from) + Math.abs(to)));
      if (missed > worst * range) worst = missed / range;
    }
    return worst / tolerance;
  }

  /** A step of `seconds` between two points; rates stand `half` places further on. */
  pass(v0: Float64Array, v1: Float64Array, half: number, seconds: number): void {
    if (this.#above !== null) this.#passLevel(v0[this.#above.index]!, v1[this.#above.index]!, this.#above.level, seconds);
    for (let index = 0; index < this.#count; index += 1) {
      this.#put(index, v1[index]!);
      const up = v0[index + half]!;
      const down = v1[index + half]!;
      if (up > 0 === down > 0 || up === down) continue;
      this.#put(index, hermite(up / (up - down), v0[index]!, up * seconds, v1[index]!, down * seconds));
    }
  }

  #passLevel(from: number, to: number, level: number, seconds: number): void {
    const [low, high] = from < to ? [from, to] : [to, from];
    if (high <= level) return;
    this.aboveS += low >= level ? seconds : (seconds * (high - level)) / (high - low);
  }

  #put(index: number, value: number): void {
    if (value < this.least[index]!) this.least[index] = value;
    if (value > this.most[index]!) this.most[index] = value;
  }
}
