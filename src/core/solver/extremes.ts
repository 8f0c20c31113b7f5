import { hermite } from './locate-event.ts';

/** Least and most of each probe, also inside a step, by the cubic through both ends. */
export class Extremes {
  readonly least: Float64Array;
  readonly most: Float64Array;
  /** Time spent above the level, since the run began, seconds. */
  aboveS = 0;
  readonly #above: { readonly index: number; readonly level: number } | null;
  readonly #from: number;
  readonly #count: number;

  /** `from`: row of the first probe; `above`: a level that one of them is held against. */
  constructor(from: number, count: number, above: { readonly index: number; readonly level: number } | null) {
    this.#above = above;
    this.#from = from;
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
    for (let index = 0; index < this.#count; index += 1) this.#put(index, values[this.#from + index]!);
  }

  /** A step of `seconds` between two points. */
  pass(v0: Float64Array, rate0: Float64Array, v1: Float64Array, rate1: Float64Array, seconds: number): void {
    if (this.#above !== null && v1[this.#from + this.#above.index]! > this.#above.level) this.aboveS += seconds;
    for (let index = 0; index < this.#count; index += 1) {
      const row = this.#from + index;
      this.#put(index, v1[row]!);
      const [up, down] = [rate0[row]!, rate1[row]!];
      if (up > 0 === down > 0 || up === down) continue;
      this.#put(index, hermite(up / (up - down), v0[row]!, up * seconds, v1[row]!, down * seconds));
    }
  }

  #put(index: number, value: number): void {
    if (value < this.least[index]!) this.least[index] = value;
    if (value > this.most[index]!) this.most[index] = value;
  }
}
