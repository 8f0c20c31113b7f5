import type { ExhibitOf } from '../../evidence/case.ts';
import type { Role } from '../../evidence/instrument.ts';
import { ROLES } from '../../evidence/instrument.ts';
import type { Value } from '../../evidence/value.ts';
import { derive } from '../../formula/derive.ts';
import { windingByResistance } from '../../formula/thermal/winding-by-resistance.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { type Opened, openValue } from '../bench/open-value.ts';

type Spots = ExhibitOf<'spots'>;
type Row = Spots['rows'][number];

/** Mean temperature of a winding by its resistance cold and hot; without one of the three readings none, with the state of the first that lacks. */
export function windingOf(
  bench: Bench,
  exhibit: Spots,
  row: Row,
): { readonly temperature: Derived | null; readonly opened: Opened<string> } {
  const at = `/exhibits/${exhibit.id}/rows/${row.id}/resistance`;
  if (exhibit.struck !== undefined) return { temperature: null, opened: { state: 'struck', because: exhibit.struck } };
  const of = (key: 'cold' | 'coldAt' | 'hot', role: Role, symbol: string): { opened: Opened<string>; at: Derived | null } => {
    const opened = openValue<string>(row.resistance?.[key] as Value | undefined);
    const quantity = opened.state === 'read' ? parseQuantity(opened.v, ROLES[role]) : null;
    if (opened.state !== 'read' || quantity === null || isRefusal(quantity)) return { opened, at: null };
    const { instrument } = opened.read;
    return { opened, at: deriveReading(bench, quantity, { field: `${at}/${key}`, role, day: exhibit.day, instrument, symbol }) };
  };
  const [cold, start, hot] = [of('cold', 'resistance', 'R_1'), of('coldAt', 'temperature', 't_1'), of('hot', 'resistance', 'R_2')];
  if (cold.at === null || start.at === null || hot.at === null) {
    const lacking = [cold, start, hot].find((one) => one.at === null)!;
    return { temperature: null, opened: lacking.opened };
  }
  const temperature = derive(windingByResistance, { hot: hot.at, cold: cold.at, start: start.at }, `heat/${exhibit.id}/${row.id}/winding`);
  return { temperature, opened: hot.opened };
}
