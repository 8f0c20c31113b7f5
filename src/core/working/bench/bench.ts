import type { Case, Exhibit, ExhibitOf } from '../../evidence/case.ts';
import type { Day } from '../../evidence/day.ts';
import type { Instrument } from '../../evidence/instrument.ts';
import type { Conductor, Part, Place, Port } from '../../evidence/sample.ts';

/** What the importer read from one attached file, reduced, in the file's own units. Handed to `assess` by the hash of the file. */
export interface ReadTable {
  readonly rows: number;
  readonly columns: readonly {
    readonly name: string;
    readonly unit: string | null;
    /** NaN where the file has no number. */
    readonly values: ArrayLike<number>;
    /** Codes of unsettled questions about this column; it is not usable while there are any. */
    readonly doubts: readonly string[];
  }[];
}
export type Tables = ReadonlyMap<string, ReadTable>;

/** The case with its lists by id. */
export interface Bench {
  readonly one: Case;
  readonly tables: Tables;
  readonly days: ReadonlyMap<string, Day>;
  readonly instruments: ReadonlyMap<string, Instrument>;
  readonly ports: ReadonlyMap<string, Port>;
  readonly conductors: ReadonlyMap<string, Conductor>;
  readonly parts: ReadonlyMap<string, Part>;
  readonly places: ReadonlyMap<string, Place>;
  /** Declared correlations between readings, by field, both ways. */
  readonly correlations: ReadonlyMap<string, ReadonlyMap<string, number>>;
}

export function openBench(one: Case, tables: Tables): Bench {
  const byId = <T extends { id: string }>(list: readonly T[]): ReadonlyMap<string, T> => new Map(list.map((item) => [item.id, item]));
  return {
    one,
    tables,
    days: byId(one.days),
    instruments: byId(one.instruments),
    ports: byId(one.ports),
    conductors: byId(one.conductors),
    parts: byId(one.parts),
    places: byId(one.places),
    correlations: correlationsOf(one),
  };
}

function correlationsOf(one: Case): Map<string, Map<string, number>> {
  const found = new Map<string, Map<string, number>>();
  for (const { a, b, r } of one.correlations ?? []) {
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const)
      found.set(from, (found.get(from) ?? new Map<string, number>()).set(to, r));
  }
  return found;
}

export function exhibitsOf<K extends Exhibit['kind']>(bench: Bench, kind: K): ExhibitOf<K>[] {
  return bench.one.exhibits.filter((exhibit): exhibit is ExhibitOf<K> => exhibit.kind === kind);
}

/** The name a reader knows a conductor, part, place or port by. */
export function nameOf(bench: Bench, id: string): string {
  return bench.conductors.get(id)?.name ?? bench.parts.get(id)?.ref ?? bench.places.get(id)?.name ?? bench.ports.get(id)?.name ?? id;
}
