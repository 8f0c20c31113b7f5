import { incrementAt } from './increment-matrix.ts';
import type { Arena, Block } from './kernel/arena.ts';
import { padded } from './kernel/arena.ts';
import { addMoment } from './moments.ts';
import { TICK_LEVEL, type Topologies, type Topology } from './topology.ts';

/** Products that one leap may take: one for each binary digit of its length. */
const DIGITS = 31;

/** The states of a run, a trial ahead of them, and what is looked at in both. */
export class March {
  readonly #arena: Arena;
  readonly #topologies: Topologies;
  readonly #n: number;
  readonly #rows: number;
  readonly #nothing: Block;
  /** States between the products of a leap, and the level of each product. */
  readonly #between: Block[] = [];
  readonly #levels = new Int32Array(DIGITS);
  #count = 0;
  /** States now, and after the trial. */
  x: Block;
  y: Block;
  /** Values and rates that belong to them. */
  v0: Block;
  v1: Block;

  constructor(arena: Arena, topologies: Topologies, start: Float64Array) {
    this.#arena = arena;
    this.#topologies = topologies;
    this.#n = start.length;
    this.#rows = padded(start.length);
    const most = 2 * padded(topologies.layout.count);
    this.#nothing = arena.block(most);
    this.x = arena.block(this.#rows);
    this.y = arena.block(this.#rows);
    this.v0 = arena.block(most);
    this.v1 = arena.block(most);
    this.x.data.set(start);
  }

  lookNow({ look: { matrix, half } }: Topology): void {
    this.#arena.times(matrix, 2 * half, this.#n, this.x, this.#nothing, this.v0);
  }

  /** y = x so many ticks later, and what is looked at there; answers how many products it took. */
  try(topology: Topology, ticks: number): number {
    let from = this.x;
    this.#count = 0;
    for (let rest = ticks; rest > 0; ) {
      const level = 31 - Math.clz32(rest);
      rest ^= 1 << level;
      const to = rest === 0 ? this.y : this.#state(this.#count);
      const matrix = topology.chain.matrices[level] ?? incrementAt(this.#topologies.bench, topology.chain, TICK_LEVEL + level);
      this.#arena.times(matrix, this.#rows, this.#n, from, from, to);
      this.#levels[this.#count] = level;
      this.#count += 1;
      from = to;
    }
    const { matrix, half } = topology.look;
    this.#arena.times(matrix, 2 * half, this.#n, this.y, this.#nothing, this.v1);
    return this.#count;
  }

  #state(index: number): Block {
    let state = this.#between[index];
    if (state === undefined) {
      state = this.#arena.block(this.#rows);
      this.#between.push(state);
    }
    return state;
  }

  /** Takes the last trial; `counting`: its part of the sums, too. */
  take(topology: Topology, counting: boolean): void {
    if (counting)
      for (let index = 0; index < this.#count; index += 1)
        addMoment(this.#topologies.bench, topology, this.#levels[index]!, index === 0 ? this.x : this.#between[index - 1]!);
    const [x, v] = [this.x, this.v0];
    this.x = this.y;
    this.y = x;
    this.v0 = this.v1;
    this.v1 = v;
  }
}
