import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Test that may stand in for a clearance that is too short, at sea level: the voltage of its impulses by the required withstand voltage. */
export const withstandTest = defineTable({
  id: 'iec-62368-1/2018/withstand-test',
  title: 'Impulse test that may stand in for a clearance',
  source: cite('iec-62368-1', 'table 15', 'secondary', { alsoBy: ['an open magnetics library, data block of IEC 62368-1'] }),
  lookUp: 'first row that covers',
  key: { name: 'required withstand voltage', unit: 'V peak', si: 'V', factor: 1 },
  columns: { test: { unit: 'V peak', si: 'V', factor: 1 } },
  rows: [
    [330, 360],
    [500, 540],
    [800, 930],
    [1500, 1750],
    [2500, 2920],
    [4000, 4920],
    [6000, 7390],
    [8000, 9850],
    [12000, 14770],
  ],
});
