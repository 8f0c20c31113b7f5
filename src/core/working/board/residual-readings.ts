import type { ExhibitOf } from '../../evidence/case.ts';
import type { Value } from '../../evidence/value.ts';
import { storedEnergy } from '../../formula/board/stored-energy.ts';
import { derive } from '../../formula/derive.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { openValue } from '../bench/open-value.ts';
import { bulkCapacitance } from './bulk-capacitance.ts';
import { bestValue } from './part-quantity.ts';

/** One reading of what was left, with the energy it stands for where the capacitance is known. */
export interface ResidualReading {
  readonly field: string;
  readonly volts: Derived;
  /** Seconds since unplugging; null where nobody stated them. */
  readonly after: number | null;
  readonly energy: Derived | null;
}

export interface Residual {
  readonly exhibit: ExhibitOf<'residual'>;
  /** Marking of the part it was read across; null where none is named. */
  readonly across: string | null;
  readonly first: ResidualReading;
  readonly later: ResidualReading | null;
}

/** Every residual that was read and not struck. */
export function residualReadings(bench: Bench): Residual[] {
  return exhibitsOf(bench, 'residual').flatMap((exhibit): Residual[] => {
    if (exhibit.struck !== undefined) return [];
    const capacitance = capacitanceOf(bench, exhibit);
    const read = (which: 'value' | 'later', value: Value<string> | undefined, after: string | undefined): ResidualReading | null => {
      const field = `/exhibits/${exhibit.id}/${which === 'value' ? 'value' : 'later/value'}`;
      const opened = openValue<string>(value);
      const quantity = opened.state === 'read' ? parseQuantity(opened.v, 'voltage') : null;
      if (opened.state !== 'read' || quantity === null || isRefusal(quantity)) return null;
      const volts = deriveReading(
        bench,
        { ...quantity, value: Math.abs(quantity.value) },
        { field, role: 'residualVoltage', day: exhibit.day, instrument: opened.read.instrument, symbol: 'V' },
      );
      const time = after === undefined ? null : parseQuantity(after, 'time');
      return {
        field,
        volts,
        after: time === null || isRefusal(time) ? null : time.value,
        energy: capacitance === null ? null : derive(storedEnergy, { capacitance, crest: volts }, `board/${exhibit.id}/energy-${which}`),
      };
    };
    const first = read('value', exhibit.value, exhibit.after);
    if (first === null) return [];
    const across = exhibit.across === undefined ? null : (bench.parts.get(exhibit.across)?.ref ?? exhibit.across);
    return [{ exhibit, across, first, later: read('later', exhibit.later?.value, exhibit.later?.after) }];
  });
}

/** Of the part it was read across, else of all bulk capacitors together. */
function capacitanceOf(bench: Bench, { across }: ExhibitOf<'residual'>): Derived | null {
  const part = across === undefined ? undefined : bench.parts.get(across);
  if (part !== undefined) return bestValue(bench, part, 'capacitance', 'capacitance', 'C').at;
  const all = bulkCapacitance(bench);
  return 'because' in all ? null : all;
}
