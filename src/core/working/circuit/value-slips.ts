import type { Slip } from '../../circuit/slip/slip.ts';
import type { Part } from '../../evidence/sample.ts';
import { decodeMarking } from '../../marking/decode-marking.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';

const SAME = 0.02; // a value agrees with a marking within rounding of its digits; house choice
const KIND = {
  resistor: 'resistance',
  fusibleResistor: 'resistance',
  ceramicCapacitor: 'capacitance',
  filmCapacitor: 'capacitance',
  capacitor: 'capacitance',
  inductor: 'inductance',
} as const;
const DECODED = { resistance: 'resistor', capacitance: 'capacitor', inductance: 'inductor' } as const;

/** Values that no meaning of the marking has, and turns that the transformer taken apart does not have. */
export function valueSlips(bench: Bench): Slip[] {
  return [...bench.one.parts.flatMap(againstMarking), ...againstStack(bench)];
}

function againstMarking(part: Part): Slip[] {
  const kind = findRead(part.kind);
  const quantity = kind !== null && kind in KIND ? KIND[kind as keyof typeof KIND] : null;
  const [typed, marking] = [findRead<string>(part.value), findRead<string>(part.marking)];
  if (quantity === null || typed === null || marking === null) return [];
  const value = parseQuantity(typed, quantity);
  const decoded = decodeMarking(marking, DECODED[quantity]);
  if (isRefusal(value) || isRefusal(decoded)) return [];
  const meant = decoded.readings.flatMap((reading) => reading.value ?? []);
  if (meant.length === 0 || meant.some((one) => Math.abs(one - value.value) <= SAME * Math.max(one, value.value))) return [];
  return [{ code: 'valueAgainstMarking', part: part.id, nets: [], args: { value: typed, marking } }];
}

/** Windings by name; a name that only one of the two has says nothing. */
function againstStack(bench: Bench): Slip[] {
  return exhibitsOf(bench, 'stack')
    .filter(({ struck }) => struck === undefined)
    .flatMap((stack) => {
      const counted = new Map<string, number | null>();
      for (const layer of stack.outsideIn)
        if (layer.is === 'winding') {
          const before = counted.get(layer.name);
          const own = turns(findRead<string>(layer.turns));
          counted.set(layer.name, before === null || own === null ? null : (before ?? 0) + own); // a winding may come off in several pieces
        }
      return (bench.parts.get(stack.part)?.windings ?? []).flatMap((winding): Slip[] => {
        const [traced, unwound] = [turns(findRead<string>(winding.turns)), counted.get(winding.name) ?? null];
        if (traced === null || unwound === null || traced === unwound) return [];
        return [
          {
            code: 'turnsAgainstStack',
            part: stack.part,
            nets: [],
            args: { winding: winding.name, traced: String(traced), unwound: String(unwound) },
          },
        ];
      });
    });
}

function turns(text: string | null): number | null {
  const read = text === null ? null : parseQuantity(text, 'ratio');
  return read === null || isRefusal(read) ? null : read.value;
}
