import type { Tree } from '../day-order.ts';
import { MAINS_SIDE, OTHER_SIDE } from './asks.ts';
import { type Ask, type Given, keepAsExhibit, keptAsExhibit, type Task } from './task.ts';

const TEST_VOLTAGE: Ask = { key: 'testVoltage', options: () => ['500 V', '250 V', '100 V'].map((value) => ({ value, name: value })) };
const PIN: Ask = { key: 'between', options: MAINS_SIDE.options };
const OTHER_PIN: Ask = { key: 'and', options: MAINS_SIDE.options };

const pair = (from: string | undefined, to: string | undefined): Tree =>
  from === undefined || to === undefined ? {} : { between: [from, to] };
const acrossBarrier = ({ chosen }: Given): Tree => pair(chosen['mainsConductor'], chosen['outputConductor']);

/** Before power: nothing runs, nothing is live. */
export const COLD_TASKS: readonly Task[] = [
  {
    id: 'coldResistance',
    entry: 'number',
    number: { key: 'coldResistance', kind: 'resistance', units: ['MΩ', 'kΩ', 'Ω'] },
    asks: [PIN, OTHER_PIN],
    keep: keepAsExhibit('cold', ({ chosen }) => ({ quantity: 'resistance', ...pair(chosen['between'], chosen['and']) })),
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
