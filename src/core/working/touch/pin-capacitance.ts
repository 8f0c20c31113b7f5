import type { Part } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { greatestCapacitance } from '../../formula/touch/greatest-capacitance.ts';
import { parallelCapacitance } from '../../formula/touch/parallel-capacitance.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead, openValue } from '../bench/open-value.ts';
import { suppressionAbsent } from '../board/bridging-facts.ts';

/** What holds charge across the pins: recorded X capacitors, or what was measured between the pins before power. */
export type PinCapacitance =
  | {
      readonly state: 'known' /** As it is. */;
      readonly actual: Derived /** Rated value plus tolerance. */;
      readonly greatest: Derived;
      readonly names: readonly string[];
    }
  /** Somebody looked for suppression parts and found none. */
  | { readonly state: 'none' }
  | { readonly state: 'unknown' };

const USUAL_TOLERANCE = 0.2; // X capacitors are sold with 10 or 20 %; common practice
const COULD_STAND_THERE = new Set(['ceramicCapacitor', 'filmCapacitor', 'capacitor']);

export function pinCapacitance(bench: Bench, pin: string): PinCapacitance {
  const parts = bench.one.parts.filter((part) => acrossThePins(bench, part, pin));
  if (parts.length > 0) {
    const each = parts.map((part) => capacitanceOf(bench, part));
    const known = each.filter((one) => one !== null);
    if (known.length < each.length) return { state: 'unknown' };
    const sum = (list: readonly Derived[], what: string): Derived =>
      list.reduce((one, two, index) => derive(parallelCapacitance, { one, two }, `touch/pins/${what}-${index}`));
    return {
      state: 'known',
      actual: sum(
        known.map(({ actual }) => actual),
        'capacitance',
      ),
      greatest: sum(
        known.map(({ greatest }) => greatest),
        'greatest-capacitance',
      ),
      names: parts.map(({ ref }) => ref),
    };
  }
  const measured = measuredCold(bench, pin);
  if (measured !== null) return { state: 'known', actual: measured, greatest: measured, names: [`${nameOf(bench, pin)}, before power`] };
  return suppressionAbsent(bench) ? { state: 'none' } : { state: 'unknown' };
}

/** Of an X class, or any other capacitor but an electrolytic with one foot on the pin itself and the other on the mains side. */
function acrossThePins(bench: Bench, part: Part, pin: string): boolean {
  const kind = findRead(part.kind);
  if (findRead(part.safetyClass)?.startsWith('X') === true) return true;
  if (kind === null || !COULD_STAND_THERE.has(kind)) return false;
  const nets = (part.pins ?? []).map(({ net }) => findRead(net));
  const others = nets.filter((net) => net !== pin);
  return (
    nets.includes(pin) && others.length > 0 && others.every((net) => net !== null && findRead(bench.conductors.get(net)?.side) === 'mains')
  );
}

function capacitanceOf(bench: Bench, part: Part): { actual: Derived; greatest: Derived } | null {
  const [marked, measured] = [findRead(part.value), findRead(part.measured)].map((text) => {
    const quantity = text === null ? null : parseQuantity(text, 'capacitance');
    return quantity === null || isRefusal(quantity) || quantity.side !== undefined || quantity.value <= 0 ? null : quantity;
  });
  const read =
    measured === null || measured === undefined
      ? null
      : deriveReading(bench, measured, {
          field: `/parts/${part.id}/measured`,
          role: 'capacitance',
          day: bench.one.days[0]?.id,
          symbol: 'C',
        });
  if (marked === null || marked === undefined) return read === null ? null : { actual: read, greatest: read };
  const field = `/parts/${part.id}/value`;
  const rated = given('typed', marked.value, 'F', { id: field, name: 'ratedCapacitance', field, symbol: 'C' });
  const tolerance = toleranceOf(part);
  const greatest = derive(greatestCapacitance, { rated, tolerance }, `touch/${part.id}/greatest-capacitance`);
  if (read !== null) return { actual: read, greatest };
  const spread = doubtOf({ id: `tolerance/${part.id}`, u: rectangular(marked.value * tolerance.value), means: 'tolerance' });
  return {
    actual: given(
      'typed',
      marked.value,
      'F',
      { id: `touch/${part.id}/capacitance`, name: 'ratedCapacitance', field, symbol: 'C' },
      { form: spread },
    ),
    greatest,
  };
}

function toleranceOf(part: Part): Derived {
  const opened = openValue(part.rating?.tolerance);
  const field = `/parts/${part.id}/rating/tolerance`;
  const stated = opened.state === 'read' ? parseQuantity(opened.v, 'ratio') : null;
  if (stated !== null && !isRefusal(stated))
    return given('typed', Math.abs(stated.value), '1', { id: field, name: 'tolerance', field, symbol: 'τ' });
  const source = cite('bench', 'X capacitors are sold with a tolerance of 10 or 20 %', 'common-practice');
  return given('constant', USUAL_TOLERANCE, '1', { id: `touch/${part.id}/tolerance`, name: 'estimate-tolerance', symbol: 'τ', source });
}

function measuredCold(bench: Bench, pin: string): Derived | null {
  for (const exhibit of exhibitsOf(bench, 'cold')) {
    if (exhibit.struck !== undefined || exhibit.quantity !== 'capacitance' || !exhibit.between.includes(pin)) continue;
    const mains = exhibit.between.every((end) => findRead(bench.conductors.get(end)?.side) === 'mains');
    const opened = openValue<string>(exhibit.value);
    if (!mains || opened.state !== 'read') continue;
    const quantity = parseQuantity(opened.v, 'capacitance');
    if (isRefusal(quantity) || quantity.side !== undefined || quantity.value <= 0) continue;
    return deriveReading(bench, quantity, {
      field: `/exhibits/${exhibit.id}/value`,
      role: 'capacitance',
      day: exhibit.day,
      instrument: opened.read.instrument,
      symbol: 'C',
    });
  }
  return null;
}
