import type { ExhibitOf } from '../../evidence/case.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { materialGroup } from '../../table/iec-62368-1/2018/material-group.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';

/** What must stand between two conductors: reinforced towards a hand, basic between mains conductors and towards earth, else nothing. */
export type Insulation = 'reinforced' | 'basic' | 'functional' | 'floating' | 'unknown' | 'fuseNotStated';

export type MaterialGroup = 'I' | 'II' | 'III';

export interface DistanceReading {
  readonly exhibit: ExhibitOf<'distance'>;
  readonly field: string;
  readonly opened: Opened<string>;
  /** Null unless the state is a reading. */
  readonly distance: Derived | null;
  readonly group: MaterialGroup | null;
  readonly groupKnown: boolean;
  readonly dirty: boolean;
  /** A slot or groove on the way; null when none is recorded or somebody looked and found none. */
  readonly slot: SlotReading | null;
  readonly coating: 'solderMask' | 'lacquer' | 'potting' | null;
}

/** Null where it could not be told. `straight` bridges the slot at its mouth. */
export interface SlotReading {
  readonly field: string;
  readonly width: Derived | null;
  readonly straight: Derived | null;
}

export interface PairFacts {
  /** "hv-minus~out-plus", the mains side first. */
  readonly id: string;
  readonly about: string;
  readonly ends: readonly [string, string];
  readonly insulation: Insulation;
  /** Both ends on the mains: a failure is a matter of fire, not of a hand. */
  readonly betweenMains: boolean;
  readonly surface: readonly DistanceReading[];
  readonly air: readonly DistanceReading[];
}

/** Every pair of conductors between which somebody recorded a distance, in order of id. */
export function pairFacts(bench: Bench): PairFacts[] {
  const pairs = new Map<string, { ends: [string, string]; distances: ExhibitOf<'distance'>[] }>();
  for (const exhibit of exhibitsOf(bench, 'distance')) {
    const ends = ordered(bench, exhibit.from, exhibit.to);
    const id = ends.join('~');
    const pair = pairs.get(id) ?? { ends, distances: [] };
    pair.distances.push(exhibit);
    pairs.set(id, pair);
  }
  return [...pairs.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, { ends, distances }]) => {
      const readings = distances.map((exhibit) => readDistance(bench, exhibit));
      return {
        id,
        about: ends.map((end) => nameOf(bench, end)).join(' to '),
        ends,
        ...insulationBetween(bench, ends),
        surface: readings.filter(({ exhibit }) => exhibit.path !== 'air'),
        air: readings.filter(({ exhibit }) => exhibit.path === 'air'),
      };
    });
}

function ordered(bench: Bench, a: string, b: string): [string, string] {
  const rank = (id: string): number => (findRead(bench.conductors.get(id)?.side) === 'mains' ? 0 : 1);
  return rank(a) < rank(b) || (rank(a) === rank(b) && a < b) ? [a, b] : [b, a];
}

function insulationBetween(bench: Bench, ends: readonly [string, string]): { insulation: Insulation; betweenMains: boolean } {
  const sides = ends.map((end) => findRead(bench.conductors.get(end)?.side));
  const betweenMains = sides.every((side) => side === 'mains');
  const answer = (insulation: Insulation) => ({ insulation, betweenMains });
  if (sides.includes(null)) return answer('unknown');
  if (betweenMains) {
    // behind the fuse a gap between mains conductors is functional; before it the socket feeds the arc
    const before = ends.map((end) => bench.conductors.get(end)?.beforeFuse);
    if (before.includes(false)) return answer('functional');
    return answer(before.includes(undefined) ? 'fuseNotStated' : 'basic');
  }
  if (!sides.includes('mains')) return answer('functional');
  if (sides.includes('floating')) return answer('floating');
  return answer(sides.includes('earth') ? 'basic' : 'reinforced');
}

/**
 * The first group whose least tracking index is reached. Unknown, or only known to be below something: the last, which is never kinder than
 * the truth. A material that tracks below the last group has none, and no creepage is given for it.
 */
function groupOf(cti: string | null): MaterialGroup | null {
  const index = cti === null ? null : parseQuantity(cti, 'ratio');
  if (index === null || isRefusal(index) || index.side === 'below') return 'III';
  const found = materialGroup.rows.find(([, least]) => index.value >= least)?.[0] ?? null;
  return found === 'IIIa' || found === 'IIIb' ? 'III' : found;
}

function readDistance(bench: Bench, exhibit: ExhibitOf<'distance'>): DistanceReading {
  const field = `/exhibits/${exhibit.id}/value`;
  const opened: Opened<string> = exhibit.struck === undefined ? openValue(exhibit.value) : { state: 'struck', because: exhibit.struck };
  const cti = findRead(exhibit.cti);
  const group = groupOf(cti);
  return {
    exhibit,
    field,
    opened,
    distance: opened.state === 'read' ? deriveLength(bench, exhibit, opened.v, field, opened.read.instrument) : null,
    group,
    groupKnown: cti !== null,
    dirty: findRead(exhibit.dirty) === true,
    slot: readSlot(bench, exhibit),
    coating: findRead(exhibit.coating),
  };
}

function readSlot(bench: Bench, exhibit: ExhibitOf<'distance'>): SlotReading | null {
  const field = `/exhibits/${exhibit.id}/slot`;
  const opened = openValue(exhibit.slot);
  if (opened.state === 'absent' || opened.state === 'notLooked') return null;
  if (opened.state !== 'read') return { field, width: null, straight: null };
  const { width, straight } = opened.v;
  return {
    field,
    width: deriveLength(bench, exhibit, width, `${field}/width`, opened.read.instrument),
    straight: straight === undefined ? null : deriveLength(bench, exhibit, straight, `${field}/straight`, opened.read.instrument),
  };
}

function deriveLength(
  bench: Bench,
  exhibit: ExhibitOf<'distance'>,
  text: string,
  field: string,
  instrument: string | undefined,
): Derived | null {
  const quantity = parseQuantity(text, 'length');
  if (isRefusal(quantity)) return null;
  return deriveReading(bench, quantity, {
    field,
    role: 'distance',
    day: exhibit.day,
    instrument,
    method: findRead(exhibit.method),
    symbol: 'd',
    show: 'millimetres',
  });
}
