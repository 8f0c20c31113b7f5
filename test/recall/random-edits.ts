import { isDeepStrictEqual } from 'node:util';

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
type Path = readonly (string | number)[];

/** What stands anywhere in some documents, by the place without ids and numbers: what else could stand at such a place. */
export type Pool = ReadonlyMap<string, readonly Json[]>;

export function poolOf(documents: readonly Json[]): Pool {
  const pool = new Map<string, Json[]>();
  for (const document of documents)
    for (const path of placesIn(document)) {
      const known = pool.get(patternOf(document, path)) ?? [];
      known.push(valueAt(document, path));
      pool.set(patternOf(document, path), known);
    }
  return pool;
}

/** One edit a person could make: another value, another digit, something taken out, something copied in. `random` answers from 0 to 1. */
export function randomEdit(document: Json, pool: Pool, random: () => number): Json {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
  // every member of the document as often as any other, so that a long table does not take all edits
  const member = pick(Object.keys(document as object).filter((key) => !['format', 'id', 'computed'].includes(key)));
  const places = placesIn(document).filter((path) => path[0] === member);
  const depth = 1 + Math.floor(random() * Math.max(...places.map((path) => path.length)));
  const path = pick(places.filter((one) => one.length <= depth));
  const here = valueAt(document, path);
  const what = random();
  if (typeof here === 'string' && /\d/.test(here) && what < OTHER_DIGIT) return put(document, path, otherDigit(here, random));
  if (Array.isArray(here) && here.length > 0 && what < COPIED_IN) {
    const item = pick([...here, ...(pool.get(patternOf(document, [...path, 0])) ?? [])] as Json[]);
    const fresh = typeof item === 'object' && item !== null && 'id' in item ? { ...item, id: `new-${Math.floor(random() * IDS)}` } : item;
    return put(document, path, [...here, fresh]);
  }
  if (what > TAKEN_OUT && path.length > 1) return take(document, path);
  return put(document, path, pick(pool.get(patternOf(document, path)) ?? [here]));
}

const OTHER_DIGIT = 0.6;
const COPIED_IN = 0.5;
const TAKEN_OUT = 0.8;
const IDS = 1e6;
const DIGITS = 10;

function otherDigit(text: string, random: () => number): string {
  const places = [...text.matchAll(/\d/g)].map(({ index }) => index);
  const at = places[Math.floor(random() * places.length)]!;
  return text.slice(0, at) + Math.floor(random() * DIGITS) + text.slice(at + 1);
}

function placesIn(document: Json, before: Path = []): Path[] {
  if (typeof document !== 'object' || document === null) return [];
  const keys = Array.isArray(document) ? document.map((_, index) => index) : Object.keys(document);
  return keys.flatMap((key) => {
    const path = [...before, key];
    return [path, ...placesIn((document as Record<string | number, Json>)[key]!, path)];
  });
}

/** With the kind of an exhibit in it, since kinds have members of the same name. */
function patternOf(document: Json, path: Path): string {
  return path
    .map((key, depth) => {
      if (typeof key === 'string') return key;
      const item = valueAt(document, path.slice(0, depth + 1));
      return typeof item === 'object' && item !== null && 'kind' in item && path[0] === 'exhibits' && depth < path.length - 1
        ? `*${JSON.stringify(item['kind'])}`
        : '*';
    })
    .join('/');
}

function valueAt(document: Json, path: Path): Json {
  return path.reduce<Json>((value, key) => (value as Record<string | number, Json>)[key] ?? null, document);
}

/** A copy that shares everything beside the path, as an edit of the desk does. */
function put(document: Json, [key, ...rest]: Path, to: Json): Json {
  if (key === undefined) return isDeepStrictEqual(document, to) ? document : to;
  const inner = put((document as Record<string | number, Json>)[key] ?? null, rest, to);
  return Array.isArray(document) ? document.with(key as number, inner) : { ...(document as object), [key]: inner };
}

function take(document: Json, path: Path): Json {
  const parent = path.slice(0, -1);
  const holder = valueAt(document, parent);
  const key = path.at(-1)!;
  const without = Array.isArray(holder)
    ? holder.toSpliced(key as number, 1)
    : Object.fromEntries(Object.entries(holder as object).filter(([name]) => name !== key));
  return put(document, parent, without as Json);
}
