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
    return plain(understood) === plain(text) ? null : `= ${understood}`;
  };
}

/** Without what says nothing new: spaces, the kind of decimal mark, zeros at the end. */
function plain(text: string): string {
  return text
    .replace(/\s/g, '')
    .replaceAll(',', '.')
    .replaceAll('\u2212', '-')
    .replace(/(\.\d*?)0+(?!\d)/g, '$1')
    .replace(/\.(?!\d)/g, '');
}

function textOf(read: Quantity): string {
  return quantityText({ value: read.value, unit: read.unit, u: read.u, side: read.side });
}
