import { type CaseReader, listOf } from '../../part/new-exhibit.ts';
import type { Tree } from '../day-order.ts';
import { MAINS_SIDE, OTHER_SIDE } from './asks.ts';
import { type Ask, type Given, keepAsExhibit, keptAsExhibit, type Task } from './task.ts';

const TEST_VOLTAGE: Ask = { key: 'testVoltage', options: () => ['500 V', '250 V', '100 V'].map((value) => ({ value, name: value })) };
const PIN: Ask = { key: 'between', options: MAINS_SIDE.options };
const OTHER_PIN: Ask = { key: 'and', not: 'between', options: MAINS_SIDE.options };

const pair = (from: string | undefined, to: string | undefined): Tree =>
  from === undefined || to === undefined ? {} : { between: [from, to] };
const acrossBarrier = ({ chosen }: Given): Tree => pair(chosen['mainsConductor'], chosen['outputConductor']);

/** The two pins, made when a reading between them is the first of the case. */
const LINE = { id: 'line', name: 'line', side: 'mains' };
const NEUTRAL = { id: 'neutral', name: 'neutral', side: 'mains' };
const hasConductor = (reader: CaseReader, id: string): boolean => listOf(reader, 'conductors').some((item) => item['id'] === id);
const keepResistance = keepAsExhibit('cold', ({ chosen }) => ({
  quantity: 'resistance',
  ...pair(chosen['and'] === undefined ? LINE.id : chosen['between'], chosen['and'] ?? NEUTRAL.id),
}));

/** Before power: nothing runs, nothing is live. */
export const COLD_TASKS: readonly Task[] = [
  {
    id: 'coldResistance',
    entry: 'number',
    number: { key: 'coldResistance', kind: 'resistance', units: ['MΩ', 'kΩ', 'Ω'] },
    asks: [PIN, OTHER_PIN],
    keep: (reader, given) => {
      const { between, and } = given.chosen;
      const missing = between === undefined || and === undefined ? [LINE, NEUTRAL].filter(({ id }) => !hasConductor(reader, id)) : [];
      return [...missing.map((to) => ({ at: `/case/conductors/${to.id}`, to })), ...keepResistance(reader, given)];
    },
    kept: keptAsExhibit('cold', { quantity: 'resistance' }),
  },
  {
    id: 'coldCapacitance',
    entry: 'number',
    number: { key: 'coldCapacitance', kind: 'capacitance', units: ['nF', 'pF', 'µF'] },
    asks: [MAINS_SIDE, OTHER_SIDE],
    keep: keepAsExhibit('cold', (given) => ({ quantity: 'capacitance', ...acrossBarrier(given) })),
    kept: keptAsExhibit('cold', { quantity: 'capacitance' }),
  },
  {
    id: 'coldInsulation',
    entry: 'number',
    number: { key: 'coldInsulation', kind: 'resistance', units: ['GΩ', 'MΩ'] },
    asks: [MAINS_SIDE, OTHER_SIDE, TEST_VOLTAGE],
    keep: keepAsExhibit('cold', (given) => ({
      quantity: 'insulation',
      ...acrossBarrier(given),
      ...(given.chosen['testVoltage'] === undefined ? {} : { testVoltage: given.chosen['testVoltage'] }),
    })),
    kept: keptAsExhibit('cold', { quantity: 'insulation' }),
  },
];
