import { PICK_WORDS } from '../../../present/words/bench-words.ts';
import { listOf } from '../../part/new-exhibit.ts';
import type { Tree } from '../day-order.ts';
import { type Ask, choices, optionsFrom } from './task.ts';

const sideOf = (item: Tree): unknown => {
  const side = item['side'];
  return typeof side === 'object' && side !== null ? (side as Tree)['v'] : side;
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
export const PORT: Ask = { key: 'port', options: optionsFrom('ports') };
export const PLACE: Ask = { key: 'place', options: optionsFrom('places'), everyTime: true };
/** Chosen before the mains comes on; live, a mark takes what was chosen last. */
export const INSIDE_PLACE: Ask = { key: 'placeInside', options: optionsFrom('places', (place) => place['outside'] !== true) };
export const TOUCHED: Ask = { key: 'from', options: optionsFrom('conductors', (item) => sideOf(item) !== 'mains') };
export const MAINS_SIDE: Ask = { key: 'mainsConductor', options: optionsFrom('conductors', (item) => sideOf(item) === 'mains') };
export const OTHER_SIDE: Ask = { key: 'outputConductor', options: optionsFrom('conductors', (item) => sideOf(item) !== 'mains') };
export const FROM: Ask = { key: 'between', options: optionsFrom('conductors'), everyTime: true };
export const TO: Ask = { key: 'and', not: 'between', options: optionsFrom('conductors'), everyTime: true };
export const PROBED: Ask = { key: 'probed', options: optionsFrom('conductors') };
export const AGAINST: Ask = { key: 'against', not: 'probed', options: optionsFrom('conductors') };
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
