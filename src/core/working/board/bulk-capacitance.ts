import { sumOfCapacitances } from '../../formula/board/sum-of-capacitances.ts';
import { derive } from '../../formula/derive.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import type { Opened } from '../bench/open-value.ts';
import { bulkFacts } from './bulk-facts.ts';
import { bestValue } from './part-quantity.ts';

/** Why it is not known: a value that is no reading, wiring that is not known, or no bulk capacitor. */
export type NoCapacitance =
  | { readonly because: 'value'; readonly opened: Opened<unknown>; readonly field: string }
  | { readonly because: 'wiring' | 'notLooked' | 'unknownValue' | 'doesNotApply' };

/** All bulk capacitors together, each as measured or else as marked. */
export function bulkCapacitance(bench: Bench): Derived | NoCapacitance {
  const bulk = bulkFacts(bench);
  if (typeof bulk === 'string') return { because: bulk };
  if (bulk.some(({ share }) => share === 'uncertain')) return { because: 'wiring' };
  let sum: Derived | null = null;
  for (const { part } of bulk) {
    const own = bestValue(bench, part, 'capacitance', 'capacitance', 'C');
    if (own.at === null) return { because: 'value', opened: own.opened, field: own.field };
    sum = sum === null ? own.at : derive(sumOfCapacitances, { one: sum, other: own.at }, `board/bulk-capacitance/${part.id}`);
  }
  return sum ?? { because: 'notLooked' };
}
