import { PINS } from '../../part/new-exhibit.ts';
import type { Tree } from '../day-order.ts';
import { MAINS_SIDE, MAINS_VOLTAGE, ORIENTATION, SUPPLY, TOUCHED } from './asks.ts';
import { type Ask, choices, type Given, keepAsExhibit, keptAsExhibit, NOT_LOOKED, type Task } from './task.ts';

const METHOD: Ask = { key: 'method', options: choices('network', 'resistor', 'meter', 'probe') };
const touchUnder = ({ chosen }: Given): Tree => {
  const under: Record<string, string> = {};
  for (const key of ['supply', 'orientation', 'mains']) if (chosen[key] !== undefined) under[key] = chosen[key];
  return under;
};
const touch = (id: string, quantity: string, kind: 'current' | 'voltage', units: readonly string[]): Task => ({
  id,
  entry: 'number',
  number: { key: id, kind, units },
  asks: [TOUCHED, METHOD, MAINS_VOLTAGE, SUPPLY, ORIENTATION],
  keep: keepAsExhibit('touch', (given) => ({
    quantity,
    ...(given.chosen['from'] === undefined ? {} : { from: given.chosen['from'] }),
    method: given.chosen['method'] ?? NOT_LOOKED,
    under: touchUnder(given),
  })),
  kept: keptAsExhibit('touch', { quantity }),
});

/** Output to earth first, before anything earthed touches the output; then the current through a hand. */
export const TOUCH_TASKS: readonly Task[] = [
  touch('voltageToEarth', 'voltageToEarth', 'voltage', ['V']),
  touch('touchCurrentRms', 'touchCurrentRms', 'current', ['µA', 'mA']),
  touch('touchCurrentPeak', 'touchCurrentPeak', 'current', ['µA', 'mA']),
];

const AFTER: Ask = { key: 'after', options: () => ['1 s', '2 s'].map((value) => ({ value, name: value })), everyTime: true };
const PROBE: Ask = { key: 'method', options: choices('probe', 'meter') };
const keepPins = keepAsExhibit('touch', (given) => ({
  quantity: 'pinsAfterUnplugging',
  from: given.chosen['mainsConductor'] ?? PINS.id,
  method: given.chosen['method'] ?? NOT_LOOKED,
  after: given.chosen['after'] ?? '2 s',
  under: touchUnder(given),
}));

export const PINS_TASKS: readonly Task[] = [
  {
    id: 'pinsAfterUnplugging',
    entry: 'number',
    number: { key: 'pinsAfterUnplugging', kind: 'voltage', units: ['V'] },
    asks: [MAINS_SIDE, PROBE, MAINS_VOLTAGE, AFTER],
    keep: (reader, given) => [
      ...(given.chosen['mainsConductor'] === undefined ? [{ at: `/case/conductors/${PINS.id}`, to: PINS }] : []),
      ...keepPins(reader, given),
    ],
    kept: keptAsExhibit('touch', { quantity: 'pinsAfterUnplugging' }),
  },
];
