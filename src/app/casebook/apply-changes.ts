import type { Change, Json } from './change.ts';

/** A place where another hand was faster: what the writer saw, wanted, and what stands there now. */
export interface Conflict {
  readonly at: string;
  readonly mine: Json | undefined;
  readonly theirs: Json | undefined;
}

type Tree = { readonly [key: string]: Json };

/**
 * Applies changes in order to a copy; what is not touched is shared with the old state. A place that no longer holds what the writer saw
 * is left alone and comes back as a conflict; so does a place whose parent is gone.
 */
export function applyChanges<S extends object>(state: S, changes: readonly Change[]): { state: S; done: Change[]; conflicts: Conflict[] } {
  let next = state as unknown as Json;
  const done: Change[] = [];
  const conflicts: Conflict[] = [];
  for (const change of changes) {
    const path = toPath(change.at);
    const parent = findAt(next, path.slice(0, -1));
    const now = findAt(next, path);
    if (sameJson(now, change.to)) continue; // it is so already
    if (!isHolder(parent) || !sameJson(now, change.was)) {
      conflicts.push({ at: change.at, mine: change.to, theirs: now });
      continue;
    }
    done.push({ ...change, after: placeInList(parent, path.at(-1) ?? '', change) });
    next = setAt(next, path, change);
  }
  return { state: next as unknown as S, done, conflicts };
}

/** The changes that take these back, last first. */
export function invertChanges(changes: readonly Change[]): Change[] {
  return changes.toReversed().map(({ at, was, to, after }) => ({ at, was: to, to: was, after }));
}

/** What stands at a place; undefined where nothing does. */
export function valueAtPlace(state: object, at: string): Json | undefined {
  return findAt(state as unknown as Json, toPath(at));
}

export function toPath(at: string): string[] {
  return at
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));
}

export function toPlace(path: readonly string[]): string {
  return path.map((part) => `/${part.replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

function findAt(value: Json, path: readonly string[]): Json | undefined {
  let here: Json | undefined = value;
  for (const key of path) {
    if (Array.isArray(here)) here = here[indexOf(here, key)] as Json | undefined;
    else if (isTree(here)) here = Object.hasOwn(here, key) ? here[key] : undefined;
    else return undefined;
  }
  return here;
}

function setAt(value: Json, [key, ...rest]: readonly string[], change: Change): Json {
  if (key === undefined) return change.to ?? null;
  if (Array.isArray(value)) {
    const index = indexOf(value, key);
    if (rest.length > 0) return value.with(index, setAt(value[index] as Json, rest, change));
    if (change.to === undefined) return value.toSpliced(index, 1);
    if (index >= 0) return value.with(index, change.to);
    const before = change.after === undefined ? value.length - 1 : change.after === null ? -1 : indexOf(value, change.after);
    return value.toSpliced(before + 1, 0, change.to);
  }
  const tree = value as Tree;
  const inner = rest.length > 0 ? setAt(tree[key] as Json, rest, change) : change.to;
  if (inner !== undefined) return { ...tree, [key]: inner };
  const { [key]: _gone, ...others } = tree;
  return others;
}

/** The id before the item, so that taking a change back puts an item where it was. Null for the first; undefined outside lists. */
function placeInList(parent: Json, key: string, change: Change): string | null | undefined {
  if (!Array.isArray(parent) || change.was === undefined) return change.after;
  const index = indexOf(parent, key);
  return index <= 0 ? null : idOf(parent[index - 1] as Json);
}

/** Of a list: by the id of the item; cells of a row and other lists without ids by number counted from 0. */
function indexOf(list: readonly Json[], key: string): number {
  const byId = list.findIndex((item) => idOf(item) === key);
  if (byId >= 0 || !/^\d+$/.test(key)) return byId;
  const index = Number(key);
  return index < list.length && idOf(list[index] as Json) === null ? index : -1;
}

function idOf(item: Json): string | null {
  return isTree(item) && typeof item['id'] === 'string' ? item['id'] : null;
}

function isTree(value: Json | undefined): value is Tree {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isHolder(value: Json | undefined): value is Tree | readonly Json[] {
  return typeof value === 'object' && value !== null;
}

export function sameJson(a: Json | undefined, b: Json | undefined): boolean {
  if (a === b) return true;
  if (Array.isArray(a) || Array.isArray(b))
    return (
      Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((item, index) => sameJson(item as Json, b[index] as Json))
    );
  if (!isTree(a) || !isTree(b)) return false;
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && sameJson(a[key], b[key]));
}
