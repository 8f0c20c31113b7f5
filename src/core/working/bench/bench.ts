import type { Attachment, Case, Exhibit, ExhibitOf } from '../../evidence/case.ts';
import type { Day } from '../../evidence/day.ts';
import type { Instrument } from '../../evidence/instrument.ts';
import type { Conductor, Part, Place, Port } from '../../evidence/sample.ts';

/** What the importer read from one attached file, reduced, in the file's own units. Handed to `assess` by the hash of the file. */
export interface ReadTable {
  readonly rows: number;
  /** A field of numbers, as thermal pictures are, or a table with columns of their own; not told for a table made by hand. */
  readonly shape?: 'columns' | 'matrix';
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
  readonly exhibits: ReadonlyMap<string, Exhibit>;
  readonly kinds: ReadonlyMap<Exhibit['kind'], readonly Exhibit[]>;
  readonly files: ReadonlyMap<string, Attachment>;
  /** Declared correlations between readings, by field, both ways. */
  readonly correlations: ReadonlyMap<string, ReadonlyMap<string, number>>;
}

/** `before` is the bench of the judgement before: lists that did not change are taken over from it as they are. */
export function openBench(one: Case, tables: Tables, before?: Bench): Bench {
  const byId = <T extends { id: string }>(list: readonly T[], old: readonly T[] | undefined, map: ReadonlyMap<string, T> | undefined) =>
    list === old && map !== undefined ? map : new Map(list.map((item) => [item.id, item]));
  const was = before?.one;
  return {
    one,
    tables,
    days: byId(one.days, was?.days, before?.days),
    instruments: byId(one.instruments, was?.instruments, before?.instruments),
    ports: byId(one.ports, was?.ports, before?.ports),
    conductors: byId(one.conductors, was?.conductors, before?.conductors),
    parts: byId(one.parts, was?.parts, before?.parts),
    places: byId(one.places, was?.places, before?.places),
    exhibits: byId(one.exhibits, was?.exhibits, before?.exhibits),
    kinds: byKind(one.exhibits, before?.kinds),
    files: byId(one.files, was?.files, before?.files),
    correlations: before !== undefined && was?.correlations === one.correlations ? before.correlations : correlationsOf(one),
  };
}

/** Exhibits by kind, in the order of the case; the list of a kind in which nothing changed is the one from before. */
function byKind(exhibits: readonly Exhibit[], before: Bench['kinds'] | undefined): Bench['kinds'] {
  const kinds = new Map<Exhibit['kind'], Exhibit[]>();
  for (const exhibit of exhibits) {
    const own = kinds.get(exhibit.kind);
    if (own === undefined) kinds.set(exhibit.kind, [exhibit]);
    else own.push(exhibit);
  }
  return new Map(
    [...kinds].map(([kind, own]) => {
      const old = before?.get(kind);
      return [kind, old !== undefined && old.length === own.length && own.every((one, index) => one === old[index]) ? old : own];
    }),
  );
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

export function exhibitsOf<K extends Exhibit['kind']>(bench: Bench, kind: K): readonly ExhibitOf<K>[] {
  return (bench.kinds.get(kind) ?? []) as readonly ExhibitOf<K>[];
}

/** The name a reader knows a conductor, part, place or port by. */
export function nameOf(bench: Bench, id: string): string {
  return bench.conductors.get(id)?.name ?? bench.parts.get(id)?.ref ?? bench.places.get(id)?.name ?? bench.ports.get(id)?.name ?? id;
}
