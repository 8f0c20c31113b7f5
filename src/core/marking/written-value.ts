import { parseQuantity } from '../quantity/parse-quantity.ts';
import { isRefusal } from '../quantity/refusal.ts';
import type { Kind } from '../quantity/unit.ts';
import { buildReading } from './build-reading.ts';
import type { Part, Reading } from './reading.ts';

const WITH_UNIT = /^(?!0\d)[\d.,]+\s?[pnuµmkKMG]?(?:F|H|Ω|[Oo]hms?)$/;
const PART_OF: Partial<Readonly<Record<Kind, Part>>> = { resistance: 'resistor', capacitance: 'capacitor', inductance: 'inductor' };

/** A value written out with its unit, in SI: 0.1uF, 2200 pF, 10 kΩ, 33 µH. The unit says what the part is. Common practice. */
export function readWrittenValue(text: string): Reading[] {
  if (!WITH_UNIT.test(text)) return [];
  const quantity = parseQuantity(text);
  if (isRefusal(quantity)) return [];
  const part = PART_OF[quantity.kind];
  return part === undefined || (quantity.value === 0 && part !== 'resistor') ? [] : [buildReading(part, quantity.value, 'written-value')];
}
