import type { ExhibitOf } from '../../evidence/case.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { conditionsOf, findCondition } from '../bench/conditions-of.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';

/** How far one output swings against earth. */
export interface EarthSwing {
  readonly exhibit: ExhibitOf<'earthSwing'>;
  readonly field: string;
  readonly opened: Opened<string>;
  readonly value: Derived | null;
  /** Seconds; null where nobody told. */
  readonly pulse: number | null;
  /** Behind an isolating or electronic source the whole unit floats, and what its output does against earth is not what it does at a socket. */
  readonly supply: 'direct' | 'isolating' | 'electronic' | null;
}

export function earthSwings(bench: Bench): EarthSwing[] {
  return exhibitsOf(bench, 'earthSwing').map((exhibit) => {
    const field = `/exhibits/${exhibit.id}/value`;
    const opened: Opened<string> =
      exhibit.struck === undefined ? openValue<string>(exhibit.value) : { state: 'struck', because: exhibit.struck };
    const quantity = opened.state === 'read' ? parseQuantity(opened.v, 'voltage') : null;
    const instrument = opened.state === 'read' ? opened.read.instrument : undefined;
    const text = findRead(exhibit.pulse);
    const pulse = text === null ? null : parseQuantity(text, 'time');
    const own = opened.state === 'read' ? opened.read.under : undefined;
    return {
      exhibit,
      field,
      opened,
      value:
        quantity === null || isRefusal(quantity)
          ? null
          : deriveReading(bench, quantity, { field, role: 'scope', day: exhibit.day, instrument, symbol: 'V_cm' }),
      pulse: pulse === null || isRefusal(pulse) ? null : pulse.value,
      supply: findCondition(conditionsOf(bench, exhibit, [own]).supply),
    };
  });
}
