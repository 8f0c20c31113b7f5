import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Impulse that a safety capacitor has stood, by its class; of X1, X2 and Y2 it falls with the square root of the capacitance above 1 µF. */
export const impulse = defineTable({
  id: 'iec-60384-14/2013/impulse',
  title: 'Impulse voltage of safety capacitors',
  source: cite('iec-60384-14', 'impulse voltage by class', 'secondary', {
    alsoBy: [
      'a capacitor maker, classes of X and Y capacitors',
      'another maker, safety standard for capacitors (X1, X2)',
      'a calculator on a public page: Y1 and Y4 do not depend on the capacitance',
    ],
  }),
  lookUp: 'exact key',
  key: { name: 'class', unit: '', si: 'word', factor: 1 },
  columns: { volts: { unit: 'V peak', si: 'V', factor: 1 } },
  rows: [
    ['X1', 4000],
    ['X2', 2500],
    ['Y1', 8000],
    ['Y2', 5000],
    ['Y4', 2500],
  ],
});
