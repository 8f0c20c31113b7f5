import { RIPPLE_FIXTURES } from '../../../present/words/bench-words.ts';
import { newExhibit } from '../../part/new-exhibit.ts';
import { DRAWS, loadsOf, MAINS_VOLTAGE, PORT } from './asks.ts';
import { type Ask, chosenOf, exhibitsOf, isOpen, NOT_LOOKED, type Task } from './task.ts';

const BANDWIDTH: Ask = { key: 'bandwidth', options: () => ['20 MHz', '100 MHz', '200 MHz'].map((value) => ({ value, name: value })) };
const FIXTURE: Ask = { key: 'fixture', options: () => Object.entries(RIPPLE_FIXTURES).map(([value, name]) => ({ value, name })) };

/** Ripple at an output: a figure without its bandwidth and fixture says nothing, so both are asked for. */
export const RIPPLE_TASK: Task = {
  id: 'ripple',
  entry: 'number',
  number: { key: 'ripple', kind: 'voltage', units: ['mV', 'V'] },
  asks: [PORT, BANDWIDTH, FIXTURE, DRAWS, MAINS_VOLTAGE],
  keep: (reader, { value, chosen, at }) =>
    newExhibit(reader, 'ripple', {
      ...chosenOf(chosen, 'port', 'bandwidth'),
      at,
      value,
      fixture: RIPPLE_FIXTURES[chosen['fixture'] ?? ''] ?? NOT_LOOKED,
      under: { ...chosenOf(chosen, 'mains'), ...loadsOf(chosen) },
    }).changes,
  kept: (reader) => exhibitsOf(reader, 'ripple').flatMap((item) => (isOpen(item['value']) ? [] : [item['value'] ?? NOT_LOOKED])),
};
