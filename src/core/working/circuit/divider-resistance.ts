import type { Part } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { parallelResistance } from '../../formula/feedback/parallel-resistance.ts';
import { seriesResistance } from '../../formula/feedback/series-resistance.ts';
import { decodeMarking } from '../../marking/decode-marking.ts';
import { findSeries } from '../../marking/e-series.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';
import { measuredValue } from '../board/part-quantity.ts';

/** A resistor of a divider, or several that act as one: as this sample has it, and as its marking promises for every sample. */
export interface DividerResistance {
  /** Measured where it was, else as marked with its tolerance. */
  readonly here: Derived;
  /** As marked, without doubt. */
  readonly nominal: Derived;
  /** Widest tolerance among them, as a share. */
  readonly share: number;
}

/** The value of a part is missing, with the state it is in. */
export interface MissingValue {
  readonly opened: Opened<unknown>;
  readonly field: string;
}

const COARSE = 0.05; // tolerance of a resistor whose value stands in E24 and whose marking gives none; common practice
const FINE = 0.01; // of one whose value stands only in a finer series; common practice

/** Parts of each row in series, rows side by side. */
export function dividerResistance(bench: Bench, rows: readonly (readonly string[])[], at: string): DividerResistance | MissingValue {
  let all: DividerResistance | null = null;
  for (const row of rows) {
    let own: DividerResistance | null = null;
    for (const id of row) {
      const part = bench.parts.get(id);
      if (part === undefined) throw new Error(`${at}: there is no part ${id}`);
      const one = resistanceOf(bench, part);
      if ('opened' in one) return one;
      own = own === null ? one : joined(own, one, seriesResistance, `${at}/${id}/row`);
    }
    if (own !== null) all = all === null ? own : joined(all, own, parallelResistance, `${at}/${row.join('-')}/beside`);
  }
  if (all === null) throw new Error(`${at}: a divider without resistors`);
  return all;
}

function joined(one: DividerResistance, other: DividerResistance, by: typeof seriesResistance, id: string): DividerResistance {
  return {
    here: derive(by, { one: one.here, other: other.here }, id),
    nominal: derive(by, { one: one.nominal, other: other.nominal }, `${id}/nominal`),
    share: Math.max(one.share, other.share),
  };
}

function resistanceOf(bench: Bench, part: Part): DividerResistance | MissingValue {
  const field = `/parts/${part.id}/value`;
  const measured = measuredValue(bench, part, 'resistance', 'resistance', 'R').at;
  const marked = markedOhms(part);
  if (marked === null && measured === null) return { opened: openValue(part.value), field };
  const value = marked?.ohms ?? measured!.value;
  // no divider is made of nothing: a value of zero is a slip or a link, and nothing is worked out from it
  if (value <= 0 || (measured !== null && measured.value <= 0)) return { opened: openValue(part.value), field };
  const share = shareOf(part, value, marked?.share ?? null);
  const nominal = given('typed', value, 'Ω', { id: `${field}/nominal`, name: 'nominalValue', field, symbol: 'R' });
  const form = doubtOf({ id: `tolerance/${part.id}`, u: rectangular(share * value), means: 'markedTolerance', args: { part: part.ref } });
  const here = measured ?? given('typed', value, 'Ω', { id: field, name: 'markedValue', field, symbol: 'R' }, { form });
  return { here, nominal, share };
}

/** The value as typed, else what the marking says when it has one meaning. */
function markedOhms(part: Part): { ohms: number; share: number | null } | null {
  const typed = findRead<string>(part.value);
  const read = typed === null ? null : parseQuantity(typed, 'resistance');
  if (read !== null && !isRefusal(read) && read.side === undefined) return { ohms: read.value, share: null };
  const marking = findRead<string>(part.marking);
  const decoded = marking === null ? null : decodeMarking(marking, 'resistor');
  if (decoded === null || isRefusal(decoded) || decoded.readings.length !== 1) return null;
  const [{ value, tolerance } = { value: null, tolerance: null }] = decoded.readings;
  return value === null || value === 0
    ? null
    : { ohms: value, share: tolerance?.unit === '1' ? Math.max(tolerance.minus, tolerance.plus) : null };
}

function shareOf(part: Part, value: number, decoded: number | null): number {
  const text = findRead<string>(part.rating?.tolerance);
  const read = text === null ? null : parseQuantity(text, 'ratio');
  if (read !== null && !isRefusal(read)) return Math.abs(read.value);
  if (decoded !== null) return decoded;
  const series = findSeries(value);
  return series === 'E3' || series === 'E6' || series === 'E12' || series === 'E24' ? COARSE : FINE;
}
