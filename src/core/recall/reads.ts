/** What is watched, by name, as it is in this judgement; with `inside` reads in members that are maps or records are told apart. */
export type Roots = Readonly<Record<string, { readonly object: Readonly<Record<PropertyKey, unknown>>; readonly inside: boolean }>>;

/** Stands for the member itself, where it was read and not something inside of it. */
export const WHOLE = Symbol('whole');
/** Stands for the list of member names, where somebody asked which there are. */
export const NAMES = Symbol('names');
const NOT_THERE = Symbol('not there'); // equal to nothing that was ever read

/** A member of something watched, and what was read in it. */
interface Place {
  readonly root: string;
  readonly member: PropertyKey;
  readonly read: Map<unknown, unknown>;
}

/** What one piece of work read, and the pieces of work whose results it used. */
export class Reads {
  #places = new Map<string, Map<PropertyKey, Place>>();
  #used = new Set<Reads>();
  #checked = -1;
  #held = true;
  #torn = false;

  /** Where reads in a member are written down; the same object for the same member. */
  placeOf(root: string, member: PropertyKey): Map<unknown, unknown> {
    const places = this.#places.get(root) ?? new Map<PropertyKey, Place>();
    this.#places.set(root, places);
    const place = places.get(member) ?? { root, member, read: new Map<unknown, unknown>() };
    places.set(member, place);
    return place.read;
  }

  note(read: Map<unknown, unknown>, key: unknown, value: unknown): void {
    if (!read.has(key)) read.set(key, value);
    else if (!Object.is(read.get(key), value)) this.#torn = true; // read in two judgements: never used again
  }

  include(used: Reads): void {
    if (used !== this) this.#used.add(used);
  }

  /** Worked out in this judgement. */
  begin(run: number): void {
    this.#checked = run;
    this.#held = true;
  }

  /** Is everything that was read what it is now? Asked once per judgement. */
  hold(roots: Roots, run: number): boolean {
    if (this.#checked !== run) {
      this.#checked = run;
      this.#held = this.#same(roots) && [...this.#used].every((used) => used.hold(roots, run));
    }
    return this.#held && !this.#torn;
  }

  #same(roots: Roots): boolean {
    for (const places of this.#places.values())
      for (const { root, member, read } of places.values()) {
        const now = roots[root];
        if (now === undefined) return false; // not there yet in this judgement
        for (const [key, value] of read) if (!Object.is(valueAt(now, member, key), value)) return false;
      }
    return true;
  }
}

/** What stands at a place now, in the form in which `Reads` keeps it. */
function valueAt({ object }: Roots[string], member: PropertyKey, key: unknown): unknown {
  if (member === NAMES) return namesOf(object);
  const here = object[member];
  if (key === WHOLE) return here;
  if (typeof here !== 'object' || here === null) return NOT_THERE;
  if (key === NAMES) return namesOf(here);
  return here instanceof Map ? here.get(key) : (here as Record<PropertyKey, unknown>)[key as PropertyKey];
}

export function namesOf(object: object): string {
  return JSON.stringify(Object.keys(object));
}
