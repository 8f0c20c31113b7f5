import { holdUp } from '../../formula/board/hold-up.ts';
import { derive } from '../../formula/derive.ts';
import { cite } from '../../source/source.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { Valley } from './valley-facts.ts';

/** How long the output outlives the mains, between two bounds; nobody reads off a board at which bulk voltage the output drops. */
export interface HoldUp {
  readonly at: Valley;
  /** Down to a bulk voltage at which the unit was seen to hold as much; null where no lower mains shows one. */
  readonly least: Derived | null;
  /** Down to nothing: no circuit takes more out of the capacitor. */
  readonly most: Derived;
}

/** Share of a power within which another run counts as one of the same load: efficiency moves by as much from mains to mains; our convention. */
const SAME_LOAD = 0.05;

/** Hold-up at each mains voltage, the mains lost at the valley. */
export function holdUpAtEachMains(valleys: readonly Valley[]): HoldUp[] {
  const empty = given('constant', 0, 'V', {
    id: 'board/empty-capacitor',
    name: 'emptyCapacitor',
    symbol: 'V_e',
    source: cite('circuit-theory', 'energy that a capacitor gives between two voltages', 'reasoned'),
  });
  return valleys.map((at) => {
    const seen = valleys
      .filter((other) => other.valley.value < at.valley.value && other.drawn.value >= at.drawn.value * (1 - SAME_LOAD))
      .toSorted((a, b) => a.valley.value - b.valley.value)[0];
    const downTo = (end: Derived, how: string): Derived =>
      derive(holdUp, { capacitance: at.capacitance, valley: at.valley, end, power: at.drawn }, `board/${at.exhibit}/hold-up-${how}`);
    return { at, least: seen === undefined ? null : downTo(seen.valley, 'to-lowest-seen'), most: downTo(empty, 'to-empty') };
  });
}
