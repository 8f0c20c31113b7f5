import { PICK_WORDS } from '../../../present/words/bench-words.ts';
import { listOf } from '../../part/new-exhibit.ts';
import type { Tree } from '../day-order.ts';
import { type Ask, choices, type NewKind, type NewNames, optionsFrom } from './task.ts';

const sideOf = (item: Tree): unknown => {
  const side = item['side'];
  return typeof side === 'object' && side !== null ? (side as Tree)['v'] : side;
};

/** What can be named where it is asked for; one key says what it is. */
const onSide = (side: string): NewKind => ({ key: side, item: { side } });
const conductorsOn = (...sides: readonly string[]): NewNames => ({ list: 'conductors', as: sides.map(onSide) });
const ANY_CONDUCTOR = conductorsOn('mains', 'output', 'touchable', 'earth', 'floating');
const BEYOND_BARRIER = conductorsOn('output', 'touchable', 'earth', 'floating');
const MAINS_CONDUCTOR = conductorsOn('mains');
const OUTSIDE: NewKind = { key: 'outside', item: { outside: true } };
const INSIDE: NewKind = { key: 'inside', item: { outside: false } };
const ofKind = (kind: string): NewKind => ({ key: kind, item: { kind } });
const ANY_PORT: NewNames = {
  list: 'ports',
  as: ['usbA', 'usbC', 'microB', 'barrel', 'bare', 'other'].map((kind) => ({ key: kind, item: { kind, levels: [] } })),
};

/** Nominal voltages of the world's networks and the ends of a 100-240 V label, decisions of the setting apart; common practice. */
const MAINS = ['230 V', '264 V', '115 V', '90 V'];

export const SUPPLY: Ask = { key: 'supply', options: choices('direct', 'isolating', 'electronic') };
export const ORIENTATION: Ask = { key: 'orientation', options: choices('A', 'B'), everyTime: true };
/** What the day says it runs on comes first. */
export const MAINS_VOLTAGE: Ask = {
  key: 'mains',
  options: (reader) => {
    const days = listOf(reader, 'days').flatMap((day) => {
      const mains = (day['under'] as Tree | undefined)?.['mains'];
      return typeof mains === 'string' ? [mains] : [];
    });
    return [...new Set([...days, ...MAINS])].map((value) => ({ value, name: value }));
  },
};
export const FREQUENCY: Ask = {
  key: 'frequency',
  options: () => ['50 Hz', '60 Hz'].map((value) => ({ value, name: value })),
};
export const PORT: Ask = { key: 'port', options: optionsFrom('ports'), names: ANY_PORT };
export const PLACE: Ask = {
  key: 'place',
  options: optionsFrom('places'),
  everyTime: true,
  names: { list: 'places', as: [OUTSIDE, INSIDE] },
};
/** Chosen before the mains comes on; live, a mark takes what was chosen last. */
export const INSIDE_PLACE: Ask = {
  key: 'placeInside',
  options: optionsFrom('places', (place) => place['outside'] !== true),
  names: { list: 'places', as: [INSIDE] },
};
export const TOUCHED: Ask = { key: 'from', options: optionsFrom('conductors', (item) => sideOf(item) !== 'mains'), names: BEYOND_BARRIER };
export const MAINS_SIDE: Ask = {
  key: 'mainsConductor',
  options: optionsFrom('conductors', (item) => sideOf(item) === 'mains'),
  names: MAINS_CONDUCTOR,
};
export const OTHER_SIDE: Ask = {
  key: 'outputConductor',
  options: optionsFrom('conductors', (item) => sideOf(item) !== 'mains'),
  names: BEYOND_BARRIER,
};
export const FROM: Ask = { key: 'between', options: optionsFrom('conductors'), everyTime: true, names: ANY_CONDUCTOR };
export const TO: Ask = { key: 'and', not: 'between', options: optionsFrom('conductors'), everyTime: true, names: ANY_CONDUCTOR };
export const PROBED: Ask = { key: 'probed', options: optionsFrom('conductors'), names: ANY_CONDUCTOR };
export const AGAINST: Ask = { key: 'against', not: 'probed', options: optionsFrom('conductors'), names: ANY_CONDUCTOR };
/** What the outputs draw: their printed currents, or nothing. */
export const DRAWS: Ask = {
  key: 'draws',
  options: (reader) => {
    const printed = listOf(reader, 'ports').flatMap((port) =>
      ((port['levels'] ?? []) as readonly Tree[]).flatMap((level) => {
        const value = level['printed'];
        const text = typeof value === 'object' && value !== null ? (value as Tree)['v'] : value;
        return typeof text === 'string' ? [text] : [];
      }),
    );
    return [
      ...[...new Set(printed)].map((value) => ({ value, name: value })),
      { value: 'open', name: PICK_WORDS['nothingConnected'] ?? '' },
      { value: 'short', name: PICK_WORDS['shorted'] ?? '' },
    ];
  },
};

const CAPACITORS = ['electrolyticCapacitor', 'filmCapacitor', 'ceramicCapacitor', 'capacitor'];
const RESISTORS = ['resistor', 'fusibleResistor', 'ntc'];
const kindOf = (part: Tree): unknown => {
  const kind = part['kind'];
  return typeof kind === 'object' && kind !== null ? (kind as Tree)['v'] : kind;
};
const partOf = (key: string, kinds: readonly string[]): Ask => ({
  key,
  options: optionsFrom('parts', (part) => kinds.includes(String(kindOf(part)))),
  everyTime: true,
  needsName: true,
  names: { list: 'parts', as: kinds.map(ofKind) },
});
export const CAPACITOR: Ask = partOf('capacitor', CAPACITORS);
export const RESISTOR: Ask = partOf('resistor', RESISTORS);
/** Test frequencies of a bench meter; an electrolytic capacitor is specified at 100 or 120 Hz and its series resistance at 100 kHz, common practice. */
export const TEST_FREQUENCY: Ask = {
  key: 'testFrequency',
  options: () => ['100 Hz', '120 Hz', '1 kHz', '10 kHz', '100 kHz'].map((value) => ({ value, name: value })),
};
/** Load on the one output that is read; nothing where nobody said. */
export function loadsOf(chosen: Readonly<Record<string, string>>): Tree {
  const { draws, port } = chosen;
  const load = draws === 'open' || draws === 'short' ? { state: draws } : draws;
  return load === undefined || port === undefined ? {} : { loads: [{ port, draws: load }] };
}
