import type { Memory } from './memory.ts';
import { NAMES, namesOf, type Reads, WHOLE } from './reads.ts';

/** How a watched object is known: whose it is and where its reads are written down. */
export interface Watch {
  readonly memory: Memory;
  readonly name: string;
  readonly reads: Reads;
  readonly proxy: object;
}

const WATCHES = new WeakMap<object, Watch>();

export function watchOf(object: object): Watch | undefined {
  return WATCHES.get(object);
}

const PROXIES = new WeakMap<Reads, Map<string, object>>();

/**
 * What was opened under `name`, with every read of a member written down in `reads`: by the member, and where `inside` by what is read in a
 * member that is a map or a record. Answers what stands there in the judgement of this moment, also when it is kept and asked later.
 */
export function watchRoot(memory: Memory, name: string, reads: Reads): object {
  const made = PROXIES.get(reads) ?? new Map<string, object>();
  PROXIES.set(reads, made);
  const known = made.get(name);
  if (known !== undefined) return known;
  const members = new Map<PropertyKey, object>();
  const proxy = watchRecord(
    () => memory.rootOf(name).object,
    (member) => {
      const { object, inside } = memory.rootOf(name);
      const value = object[member];
      if (typeof value === 'object' && value !== null) {
        const other = WATCHES.get(value);
        if (other !== undefined) return watchRoot(memory, other.name, reads);
        if (inside && (value instanceof Map || isRecord(value))) {
          const watched = members.get(member) ?? watchMember(memory, name, member, reads);
          members.set(member, watched);
          return watched;
        }
      }
      reads.note(reads.placeOf(name, member), WHOLE, value);
      return value;
    },
    (object) => reads.note(reads.placeOf(name, NAMES), NAMES, namesOf(object)),
  );
  made.set(name, proxy);
  WATCHES.set(proxy, { memory, name, reads, proxy });
  return proxy;
}

function watchMember(memory: Memory, name: string, member: PropertyKey, reads: Reads): object {
  const read = reads.placeOf(name, member);
  const now = (): unknown => memory.rootOf(name).object[member];
  if (now() instanceof Map) return new WatchedMap(now as () => ReadonlyMap<unknown, unknown>, reads, read);
  const record = now as () => Record<PropertyKey, unknown>;
  return watchRecord(
    record,
    (key) => {
      const value = record()[key];
      reads.note(read, key, value);
      return value;
    },
    (object) => reads.note(read, NAMES, namesOf(object)),
  );
}

function watchRecord(now: () => object, get: (key: PropertyKey) => unknown, named: (object: object) => void): object {
  const refuse = (): never => {
    throw new Error('evidence and facts are not changed while they are judged');
  };
  return new Proxy(
    {},
    {
      get: (_, key) => get(key),
      has: (_, key) => get(key) !== undefined || Reflect.has(now(), key),
      ownKeys: () => {
        named(now());
        return Reflect.ownKeys(now());
      },
      getOwnPropertyDescriptor: (_, key) => {
        named(now());
        const own = Reflect.getOwnPropertyDescriptor(now(), key);
        return own === undefined
          ? undefined
          : { value: get(key), enumerable: own.enumerable === true, configurable: true, writable: false };
      },
      set: refuse,
      deleteProperty: refuse,
      defineProperty: refuse,
    },
  );
}

/** A map that says what was looked up in it; walking through it reads it whole. */
class WatchedMap<K, V> implements ReadonlyMap<K, V> {
  readonly #now: () => ReadonlyMap<K, V>;
  readonly #reads: Reads;
  readonly #read: Map<unknown, unknown>;

  constructor(now: () => ReadonlyMap<K, V>, reads: Reads, read: Map<unknown, unknown>) {
    this.#now = now;
    this.#reads = reads;
    this.#read = read;
  }

  get(key: K): V | undefined {
    const value = this.#now().get(key);
    this.#reads.note(this.#read, key, value);
    return value;
  }

  has(key: K): boolean {
    this.get(key);
    return this.#now().has(key);
  }

  #whole(): ReadonlyMap<K, V> {
    const map = this.#now();
    this.#reads.note(this.#read, WHOLE, map);
    return map;
  }

  get size(): number {
    return this.#whole().size;
  }

  forEach(visit: (value: V, key: K, map: ReadonlyMap<K, V>) => void): void {
    this.#whole().forEach((value, key) => {
      visit(value, key, this);
    });
  }

  entries(): MapIterator<[K, V]> {
    return this.#whole().entries();
  }

  keys(): MapIterator<K> {
    return this.#whole().keys();
  }

  values(): MapIterator<V> {
    return this.#whole().values();
  }

  [Symbol.iterator](): MapIterator<[K, V]> {
    return this.entries();
  }
}

function isRecord(value: object): value is Record<PropertyKey, unknown> {
  const prototype = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
}
