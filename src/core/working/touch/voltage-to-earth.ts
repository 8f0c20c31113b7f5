import type { ExhibitOf } from '../../evidence/case.ts';
import { derive } from '../../formula/derive.ts';
import { currentFromVoltage } from '../../formula/touch/current-from-voltage.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { cite } from '../../source/source.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead } from '../bench/open-value.ts';

const NETWORK_OHM = 500; // IEC 60990 figure 4: the resistor across which U2 is read
const PLAIN_OHM = 2000; // a plain resistor in place of the network

/** Current that a voltage to earth stands for. Null where nobody knows through what it flowed: a meter without a stated input resistance. */
export function currentOfVoltage(bench: Bench, exhibit: ExhibitOf<'touch'>, text: string, instrument: string | undefined): Derived | null {
  const quantity = parseQuantity(text, 'voltage');
  if (isRefusal(quantity) || (quantity.value < 0 && quantity.side !== undefined)) return null;
  const meter = instrument ?? (exhibit.day === undefined ? undefined : bench.days.get(exhibit.day)?.uses.residualVoltage);
  const through = throughOf(bench, findRead(exhibit.method), meter);
  if (through === null) return null;
  const voltage = deriveReading(
    bench,
    { ...quantity, value: Math.abs(quantity.value) },
    { field: `/exhibits/${exhibit.id}/value`, role: 'residualVoltage', day: exhibit.day, instrument, symbol: 'V' },
  );
  const current = derive(currentFromVoltage, { voltage, resistance: through.resistance }, `touch/${exhibit.id}/current-from-voltage`);
  if (!through.lessThanAHand) return current;
  // a bound from below; a reading that is itself a bound from above then says nothing
  const side = current.side === undefined || current.side === 'above' ? 'above' : 'anywhere';
  return { ...current, side, step: { ...current.step, side, u: null } };
}

function throughOf(bench: Bench, method: string | null, meter: string | undefined): { resistance: Derived; lessThanAHand: boolean } | null {
  if (method === 'network' || method === 'resistor') {
    const ohm = method === 'network' ? NETWORK_OHM : PLAIN_OHM;
    const source =
      method === 'network'
        ? cite('iec-60990', 'figure 4, U2 over 500 Ω', 'secondary')
        : cite('iec-62368-1', 'clause 5.7, 2 kΩ for a sine or direct current', 'secondary');
    const resistance = given('constant', ohm, 'Ω', { id: `touch/through-${method}`, name: `through-${method}`, symbol: 'R', source });
    return { resistance, lessThanAHand: false };
  }
  const text = meter === undefined ? undefined : bench.instruments.get(meter)?.inputResistance;
  const quantity = text === undefined ? null : parseQuantity(text, 'resistance');
  if (quantity === null || isRefusal(quantity) || quantity.side !== undefined || quantity.value <= 0) return null;
  const field = `/instruments/${meter}/inputResistance`;
  return {
    resistance: given('typed', quantity.value, 'Ω', { id: field, name: 'inputResistance', field, symbol: 'R_p' }),
    lessThanAHand: quantity.value > PLAIN_OHM,
  };
}
