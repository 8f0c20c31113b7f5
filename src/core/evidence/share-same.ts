/**
 * `after` with every part that says the same as before replaced by the object of before: members by their names, items of lists by their
 * ids, else by where they stand. The order of members counts. Both are plain trees that are not changed in place.
 */
export function shareSame<T>(before: unknown, after: T): T {
  return shared(before, after) as T;
}

function shared(before: unknown, after: unknown): unknown {
  if (Object.is(before, after) || !isTree(before) || !isTree(after)) return after;
  if (Array.isArray(before) !== Array.isArray(after)) return after;
  return Array.isArray(after) ? sharedList(before as readonly unknown[], after) : sharedRecord(before as Tree, after as Tree);
}

type Tree = Readonly<Record<string, unknown>>;

function sharedList(before: readonly unknown[], after: readonly unknown[]): readonly unknown[] {
  const byId = new Map(before.flatMap((item) => (idOf(item) === undefined ? [] : [[idOf(item), item] as const])));
  const items = after.map((item, index) => shared(idOf(item) === undefined ? before[index] : byId.get(idOf(item)), item));
  return items.length === before.length && items.every((item, index) => Object.is(item, before[index])) ? before : items;
}

function sharedRecord(before: Tree, after: Tree): Tree {
  const names = Object.keys(after);
  const old = Object.keys(before);
  const members = names.map((name) => [name, shared(before[name], after[name])] as const);
  const same =
    names.length === old.length && members.every(([name, member], index) => name === old[index] && Object.is(member, before[name]));
  return same ? before : Object.fromEntries(members);
}

function idOf(item: unknown): string | undefined {
  return isTree(item) && !Array.isArray(item) && typeof (item as Tree)['id'] === 'string' ? ((item as Tree)['id'] as string) : undefined;
}

function isTree(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}
