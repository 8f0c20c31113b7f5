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
 * Results of the last judgements with what each of them read. A result is used again when every argument is the same and everything
 * it read, also through the results it used, is the same as now. What was read is written down by what hands it out, so that nobody has to
 * declare it. Holds one result per work and first argument, and lets go of arguments that are gone.
 */
export class Memory {
  readonly #keys = new WeakMap<object, Map<string, object>>();
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

  /** What stands for one of many things that are told apart by a text; the same object for the same text of the same owner. */
  #keyOf(owner: object, id: string): object {
    const keys = this.#keys.get(owner) ?? new Map<string, object>();
    this.#keys.set(owner, keys);
    const key = keys.get(id) ?? {};
    keys.set(id, key);
    return key;
  }

  recall<S extends object, G extends readonly object[], T>(
    work: (source: S, ...given: G) => T,
    watch: Watch,
    given: G,
    one?: { readonly of: object; readonly id: string },
  ): T {
    // what is read through a watched argument is written down elsewhere
    if (given.some((one) => watchOf(one) !== undefined)) return work(watch.proxy as S, ...given);
    const cells = this.#cells.get(work) ?? new WeakMap<object, Cell>();
    this.#cells.set(work, cells);
    const key = one === undefined ? (given[0] ?? NOTHING_GIVEN) : this.#keyOf(one.of, one.id);
    const isSame = one === undefined ? Object.is : alike;
    const known = cells.get(key);
    if (known?.name === watch.name && same(given, known.given, isSame) && known.reads.hold(this.#roots, this.#run)) {
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

function same(a: readonly object[], b: readonly object[], isSame: (a: object, b: object) => boolean): boolean {
  return a.length === b.length && a.every((one, index) => isSame(one, b[index] as object));
}

/** The same object, or two plain ones whose members are the same, or lists of the same. Such are made anew each time, of parts that stay. */
function alike(a: object, b: object): boolean {
  if (a === b) return true;
  if (!isPlain(a) || !isPlain(b)) return false;
  const names = Object.keys(a);
  return names.length === Object.keys(b).length && names.every((name) => name in b && sameMember(a[name], b[name]));
}

function sameMember(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  return Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((item, index) => Object.is(item, b[index]));
}

function isPlain(value: object): value is Record<string, unknown> {
  return Object.getPrototypeOf(value) === Object.prototype && watchOf(value) === undefined;
}
