import type { Change, Json } from '../../app/casebook/change.ts';
import type { Kind } from '../../core/quantity/unit.ts';
import { type CaseReader, listOf } from '../part/new-exhibit.ts';
import type { Tree } from './day-order.ts';

/** A moment that was stamped, whose reading follows from a log or a photograph. */
export interface Mark {
  readonly place: string;
  /** Local time. */
  readonly at: string;
  /** Kind of the exhibit that it stands in. */
  readonly of: string;
  readonly kind: Kind;
  readonly unit: string;
  /** A cell of a table: it keeps digits only. */
  readonly cell: boolean;
}

const OF_KIND: Readonly<Record<string, readonly [Kind, string]>> = {
  spots: ['temperature', '°C'],
  soak: ['temperature', '°C'],
  workingVoltage: ['voltage', 'V'],
  distance: ['length', 'mm'],
  event: ['voltage', 'V'],
  resistance: ['resistance', 'MΩ'],
  capacitance: ['capacitance', 'nF'],
  insulation: ['resistance', 'GΩ'],
  touchCurrentRms: ['current', 'µA'],
  touchCurrentPeak: ['current', 'µA'],
  inputPower: ['power', 'W'],
  current: ['current', 'A'],
  mass: ['mass', 'g'],
  pin: ['length', 'mm'],
  centreOfMass: ['length', 'mm'],
  ripple: ['voltage', 'mV'],
  inductance: ['inductance', 'µH'],
  leakage: ['inductance', 'µH'],
  seriesResistance: ['resistance', 'mΩ'],
};
const OHMS: readonly [Kind, string] = ['resistance', 'kΩ'];
const FARADS: readonly [Kind, string] = ['capacitance', 'µF'];
/** What is measured on a part of a kind, where it is no capacitor. */
const MEASURED_OF: Readonly<Record<string, readonly [Kind, string]>> = { resistor: OHMS, fusibleResistor: OHMS, ntc: OHMS };
const VOLTS: readonly [Kind, string] = ['voltage', 'V'];
const CELL_KINDS: Readonly<Record<string, Kind>> = { A: 'current', V: 'voltage', W: 'power', '°C': 'temperature', min: 'time' };

/** Every mark of the case that still misses its value, oldest first. */
export function findMarks(reader: CaseReader): readonly Mark[] {
  const marks = [
    ...listOf(reader, 'exhibits').flatMap((exhibit) => inside(exhibit, `/case/exhibits/${String(exhibit['id'])}`, exhibit)),
    ...listOf(reader, 'parts').flatMap((part) =>
      inside(part, `/case/parts/${String(part['id'])}`, { ...part, kind: 'part', is: part['kind'] ?? '' }),
    ),
  ];
  return marks.sort((a, b) => (a.at < b.at ? -1 : 1));
}

function inside(value: Json, place: string, exhibit: Tree, key = ''): Mark[] {
  if (typeof value !== 'object' || value === null) return [];
  if (Array.isArray(value))
    return (value as readonly Json[]).flatMap((item, index) => {
      const id = typeof item === 'object' && item !== null ? (item as Tree)['id'] : undefined;
      return inside(item, `${place}/${typeof id === 'string' ? id : index}`, exhibit, key === 'cells' ? String(index) : key);
    });
  const tree = value as Tree;
  if (tree['state'] === 'marked') return [toMark(String(tree['at']), place, exhibit, key)];
  const named = tree['name'] === 'inputPower' || tree['name'] === 'current' ? String(tree['name']) : '';
  return Object.entries(tree).flatMap(([member, held]) =>
    inside(held, `${place}/${member}`, exhibit, named !== '' && member === 'value' ? named : member),
  );
}

function toMark(at: string, place: string, exhibit: Tree, key: string): Mark {
  const of = String(exhibit['kind']);
  const cell = /\/cells\/\d+$/.test(place);
  if (cell) {
    const columns = ((exhibit['table'] as Tree)['columns'] ?? []) as readonly Tree[];
    const unit = String(columns[Number(key)]?.['unit'] ?? '');
    return { place, at, of, kind: CELL_KINDS[unit] ?? 'ratio', unit, cell };
  }
  if (of === 'part' && key === 'measured') {
    const [kind, unit] = MEASURED_OF[String(exhibit['is'])] ?? FARADS;
    return { place, at, of, kind, unit, cell };
  }
  const inPin = place.includes('/pin/') ? 'pin' : key;
  const [kind, unit] = OF_KIND[inPin] ?? OF_KIND[String(exhibit['quantity'])] ?? OF_KIND[of] ?? VOLTS;
  return { place, at, of, kind, unit, cell };
}

/** The reading that belongs to a mark; outside a table it keeps the moment. */
export function fillMark(mark: Mark, text: string): readonly Change[] {
  const was = { state: 'marked', at: mark.at };
  return [{ at: mark.place, was, to: mark.cell ? text : { v: text, at: mark.at } }];
}
