import type { FindingRow } from '../../present/workspace/finding-row.ts';

const BY_PLACE = new WeakMap<readonly FindingRow[], ReadonlyMap<string, readonly FindingRow[]>>();

/** Findings that a place of the case decides: the place itself, what stands inside it, or the value that it is part of. */
export function findingsOn(place: string, rows: readonly FindingRow[]): readonly FindingRow[] {
  const map = BY_PLACE.get(rows) ?? index(rows);
  BY_PLACE.set(rows, map);
  return map.get(place.replace(/^\/case/, '').replace(/\/v$/, '')) ?? [];
}

function index(rows: readonly FindingRow[]): ReadonlyMap<string, readonly FindingRow[]> {
  const map = new Map<string, FindingRow[]>();
  for (const row of rows)
    for (const field of row.fields) {
      const at = field.replace(/\/v$/, '');
      map.set(at, [...(map.get(at) ?? []), row]);
    }
  return map;
}
