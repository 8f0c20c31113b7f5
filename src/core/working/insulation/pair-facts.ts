import type { ExhibitOf } from '../../evidence/case.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { materialGroup } from '../../table/iec-62368-1/2018/material-group.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';

/** What must stand between two conductors: reinforced towards a hand, basic between mains conductors and towards earth, else nothing. */
export type Insulation = 'reinforced' | 'basic' | 'functional' | 'floating' | 'unknown';

export interface DistanceReading {
  readonly exhibit: ExhibitOf<'distance'>;
  readonly field: string;
  readonly opened: Opened<string>;
  /** Null unless the state is a reading. */
  readonly distance: Derived | null;
  readonly group: 'I' | 'II' | 'III';
  readonly groupKnown: boolean;
  readonly dirty: boolean;
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
  if (betweenMains) return answer('basic');
  if (!sides.includes('mains')) return answer('functional');
  if (sides.includes('floating')) return answer('floating');
  return answer(sides.includes('earth') ? 'basic' : 'reinforced');
}

/** The first group whose least tracking index is reached; below all of them, or unknown, the last: it is never kinder than the truth. */
function groupOf(cti: string | null): 'I' | 'II' | 'III' {
  const index = cti === null ? null : parseQuantity(cti, 'ratio');
  if (index === null || isRefusal(index)) return 'III';
  return (materialGroup.rows.find(([, least]) => index.value >= least) ?? materialGroup.rows[2])[0];
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
    distance: opened.state === 'read' ? deriveDistance(bench, exhibit, opened, field) : null,
    group,
    groupKnown: cti !== null,
    dirty: findRead(exhibit.dirty) === true,
  };
}

function deriveDistance(bench: Bench, exhibit: ExhibitOf<'distance'>, opened: Extract<Opened<string>, { state: 'read' }>, field: string): Derived | null {
  const quantity = parseQuantity(opened.v, 'length');
  if (isRefusal(quantity)) return null;
  return deriveReading(bench, quantity, {
    field,
    role: 'distance',
    day: exhibit.day,
    instrument: opened.read.instrument,
    method: findRead(exhibit.method),
    symbol: 'd',
    show: 'millimetres',
  });
}
