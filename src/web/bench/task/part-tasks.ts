import type { Json } from '../../../app/casebook/change.ts';
import { type CaseReader, listOf } from '../../part/new-exhibit.ts';
import type { Tree } from '../day-order.ts';
import { CAPACITOR, RESISTOR, TEST_FREQUENCY } from './asks.ts';
import { type Ask, isOpen, keepInside, keptInside, NOT_LOOKED, type Task } from './task.ts';

/** Value of a part as its meter shows it, kept with the part; `ref` is what it is called when the case holds no such part. */
function partTask(
  id: string,
  part: Ask,
  member: 'measured' | 'seriesResistance',
  kind: 'capacitance' | 'resistance',
  units: readonly string[],
  ref: string,
): Task {
  const kept = (reader: CaseReader): readonly Json[] => {
    const own = new Set(part.options(reader).map(({ value }) => value));
    return listOf(reader, 'parts').flatMap((item) => (own.has(String(item['id'])) && !isOpen(item[member]) ? [item[member] as Json] : []));
  };
  return {
    id,
    entry: 'number',
    number: { key: id, kind, units },
    asks: kind === 'capacitance' || member === 'seriesResistance' ? [part, TEST_FREQUENCY] : [part],
    keep: (reader, { value, chosen, at }) => {
      const how = chosen[TEST_FREQUENCY.key];
      const to: Json = typeof value === 'string' ? { v: value, at, ...(how === undefined ? {} : { how }) } : value;
      const found = listOf(reader, 'parts').find((item) => item['id'] === chosen[part.key]);
      if (found !== undefined) return [{ at: `/case/parts/${String(found['id'])}/${member}`, was: found[member], to }];
      const made: Tree = { id: ref.toLowerCase(), ref, kind: part.names?.as[0]?.item['kind'] ?? NOT_LOOKED, [member]: to };
      return [{ at: `/case/parts/${String(made['id'])}`, to: made }];
    },
    kept,
  };
}

/** Parts on their own meter: best out of the circuit, with one leg lifted at least. */
export const PART_TASKS: readonly Task[] = [
  partTask('capacitorMeasured', CAPACITOR, 'measured', 'capacitance', ['µF', 'nF', 'pF'], 'C1'),
  partTask('capacitorSeries', CAPACITOR, 'seriesResistance', 'resistance', ['mΩ', 'Ω'], 'C1'),
  partTask('resistorMeasured', RESISTOR, 'measured', 'resistance', ['kΩ', 'Ω', 'MΩ'], 'R1'),
];

function ofTransformer(id: 'inductance' | 'leakage'): Task {
  return {
    id,
    entry: 'number',
    number: { key: id, kind: 'inductance', units: ['µH', 'mH'] },
    asks: [],
    keep: keepInside('stack', [id]),
    kept: keptInside('stack', [id]),
  };
}

/** The transformer while it is whole: primary open, then with the other windings shorted. */
export const WHOLE_TRANSFORMER_TASKS: readonly Task[] = [ofTransformer('inductance'), ofTransformer('leakage')];
