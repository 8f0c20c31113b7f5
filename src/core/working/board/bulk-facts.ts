import type { Part } from '../../evidence/sample.ts';
import type { Bench } from '../bench/bench.ts';
import { exhibitsOf } from '../bench/bench.ts';
import { findRead, openValue } from '../bench/open-value.ts';
import { type PartQuantity, ratingOf } from './part-quantity.ts';

/** A capacitor behind the rectifier. */
export interface BulkCapacitor {
  readonly part: Part;
  readonly rating: PartQuantity;
  /**
   * whole: it stands the whole rectified voltage. uncertain: it may share it with another in series, or belong to a doubler that is
   * switched off at the higher mains; then it stands half.
   */
  readonly share: 'whole' | 'uncertain';
}

export type BulkFacts = readonly BulkCapacitor[] | 'notLooked' | 'unknownValue' | 'doesNotApply';

/** Crest of 85 V, the lowest mains of any market: a part rated below it would not have outlived its first second there and is an auxiliary one. */
const LEAST_BULK_V = 120;
/** What joins the two halves of a filter; a resistor may be a bleeder across both and tells nothing. */
const JOINS = new Set(['inductor', 'commonModeChoke', 'jumper', 'ntc', 'fusibleResistor', 'fuse']);

/** The bulk capacitors: as the board's list names them, else electrolytic ones between two conductors of the mains side. */
export function bulkFacts(bench: Bench): BulkFacts {
  const boards = exhibitsOf(bench, 'board').filter(({ struck }) => struck === undefined);
  const lists = boards.map(({ bulk }) => openValue<string[]>(bulk));
  const named = lists.flatMap((list) => (list.state === 'read' ? list.v : []));
  const parts =
    named.length > 0 ? [...new Set(named)].map((id) => bench.parts.get(id)).filter((part) => part !== undefined) : byPins(bench);
  const doubler = boards.some(({ rectifier }) => findRead(rectifier) === 'doubler');
  if (parts.length > 0)
    return parts.map((part) => ({
      part,
      rating: ratingOf(part, 'voltage', 'voltage', 'U_r'),
      share: doubler || mayBeInSeries(bench, part, parts) ? 'uncertain' : 'whole',
    }));
  if (lists.some(({ state }) => state === 'absent')) return 'doesNotApply';
  return lists.some(({ state }) => state === 'unknown') ? 'unknownValue' : 'notLooked';
}

function byPins(bench: Bench): Part[] {
  return bench.one.parts.filter((part) => {
    if (findRead(part.kind) !== 'electrolyticCapacitor') return false;
    const [one, two] = ends(part);
    if (one === undefined || two === undefined || one === two) return false;
    if (![one, two].every((net) => findRead(bench.conductors.get(net)?.side) === 'mains')) return false;
    const { at } = ratingOf(part, 'voltage', 'voltage', 'U_r');
    return at === null || at.side !== undefined || at.value >= LEAST_BULK_V;
  });
}

/** Shares exactly one end with another bulk capacitor and nothing is known to join their other ends; or their wiring is not known. */
function mayBeInSeries(bench: Bench, part: Part, all: readonly Part[]): boolean {
  const own = ends(part);
  return all.some((other) => {
    if (other.id === part.id) return false;
    const its = ends(other);
    if (own.length < 2 || its.length < 2) return true; // nobody wrote down how they are wired
    const free = [...own.filter((net) => !its.includes(net)), ...its.filter((net) => !own.includes(net))];
    if (free.length !== 2) return false; // both ends shared: in parallel; none: not one string
    return !bench.one.parts.some((link) => JOINS.has(findRead(link.kind) ?? '') && free.every((net) => ends(link).includes(net)));
  });
}

function ends(part: Part): readonly string[] {
  return (part.pins ?? []).flatMap(({ net }) => findRead(net) ?? []);
}
