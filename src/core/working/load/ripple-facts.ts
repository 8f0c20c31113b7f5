import type { ExhibitOf } from '../../evidence/case.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';

export interface RippleReading {
  readonly exhibit: ExhibitOf<'ripple'>;
  readonly level: string;
  readonly field: string;
  readonly opened: Opened<string>;
  readonly value: Derived | null;
  readonly bandwidth: number | null;
  /** Without both a figure of ripple says nothing. */
  readonly missing: readonly ('bandwidth' | 'fixture')[];
}

export function rippleReadings(bench: Bench): RippleReading[] {
  return exhibitsOf(bench, 'ripple').map((exhibit) => {
    const field = `/exhibits/${exhibit.id}/value`;
    const opened: Opened<string> =
      exhibit.struck === undefined ? openValue<string>(exhibit.value) : { state: 'struck', because: exhibit.struck };
    const quantity = opened.state === 'read' ? parseQuantity(opened.v, 'voltage') : null;
    const instrument = opened.state === 'read' ? opened.read.instrument : undefined;
    const text = findRead(exhibit.bandwidth);
    const bandwidth = text === null ? null : parseQuantity(text, 'frequency');
    const fixture = findRead(exhibit.fixture);
    return {
      exhibit,
      level: `${exhibit.port}~${exhibit.level ?? bench.ports.get(exhibit.port)?.levels[0]?.id ?? 'first'}`,
      field,
      opened,
      value:
        quantity === null || isRefusal(quantity)
          ? null
          : deriveReading(bench, quantity, { field, role: 'ripple', day: exhibit.day, instrument, symbol: 'V_pp' }),
      bandwidth: bandwidth === null || isRefusal(bandwidth) ? null : bandwidth.value,
      missing: [
        ...(bandwidth === null ? (['bandwidth'] as const) : []),
        ...(fixture === null || fixture.trim() === '' ? (['fixture'] as const) : []),
      ],
    };
  });
}
