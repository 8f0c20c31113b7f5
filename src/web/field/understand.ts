import { quantityText } from '../../core/quantity/format-quantity.ts';
import { parseQuantity, type Quantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import type { Kind } from '../../core/quantity/unit.ts';

/** "= 4.7 kΩ" for "4k7"; nothing where the text already says it so, or cannot be read. */
export function understandQuantity(kind: string): (text: string) => string | null {
  return (text) => {
    const read = parseQuantity(text, kind as Kind);
    if (isRefusal(read)) return null;
    const understood = textOf(read);
    return understood.replace(/\s/g, '') === text.replace(/\s/g, '').replace(',', '.') ? null : `= ${understood}`;
  };
}

function textOf(read: Quantity): string {
  return quantityText({ value: read.value, unit: read.unit, u: read.u, side: read.side });
}
