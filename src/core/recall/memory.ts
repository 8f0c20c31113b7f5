import { Reads, type Roots } from './reads.ts';
import { type Watch, watchOf, watchRoot } from './watch.ts';

/** What a work came to, from which arguments, and all that it read on the way. */
interface Cell {
  readonly name: string;
  readonly given: readonly object[];
  readonly reads: Reads;
  readonly value: unknown;
}

const NOTHING_GIVEN: object = {};

/**
 * Results of the last judgements with what each of them read. A result is used again when every argument is the same object and everything
 * it read, also through the results it used, is the same as now. What was read is written down by what hands it out, so that nobody has to
 * declare it. Holds one result per work and first argument, and lets go of arguments that are gone.
 */
export class Memory {
  readonly #cells = new WeakMap<object, WeakMap<object, Cell>>();
  readonly #newReads: () => Reads;
  #roots: Roots = {};
  #run = 0;

  /** `newReads` only for tests that leave something out of what is written down. */
  constructor(newReads: () => Reads = () => new Reads()) {
    this.#newReads = newReads;
  }

  /** A new judgement: from here on what is read is read from what is opened now. */
  begin(): void {
    this.#run += 1;
    this.#roots = {};
  }

  /** The object with its members watched, and where `inside` what stands in members that are maps or records. */
  open<T extends object>(name: string, object: T, { inside }: { inside: boolean }): T {
    if (name in this.#roots) throw new Error(`${name} is opened twice in one judgement`);
    this.#roots = { ...this.#roots, [name]: { object: object as Record<PropertyKey, unknown>, inside } };
    return watchRoot(this, name, this.#newReads()) as T;
  }

  rootOf(name: string): Roots[string] {
    const root = this.#roots[name];
    if (root === undefined) throw new Error(`${name} is read before it is there`);
    return root;
  }

  recall<S extends object, G extends readonly object[], T>(work: (source: S, ...given: G) => T, watch: Watch, given: G): T {
    // what is read through a watched argument is written down elsewhere
    if (given.some((one) => watchOf(one) !== undefined)) return work(watch.proxy as S, ...given);
    const cells = this.#cells.get(work) ?? new WeakMap<object, Cell>();
    this.#cells.set(work, cells);
    const key = given[0] ?? NOTHING_GIVEN;
    const known = cells.get(key);
    if (known?.name === watch.name && same(given, known.given) && known.reads.hold(this.#roots, this.#run)) {
      watch.reads.include(known.reads);
      return known.value as T;
    }
    const reads = this.#newReads();
    watch.reads.include(reads); // before the work: it may throw, and the caller may go on
    const value = work(watchRoot(this, watch.name, reads) as S, ...given);
    reads.begin(this.#run);
    cells.set(key, { name: watch.name, given, reads, value });
    return value;
  }
}

function same(a: readonly object[], b: readonly object[]): boolean {
  return a.length === b.length && a.every((one, index) => one === b[index]);
}
