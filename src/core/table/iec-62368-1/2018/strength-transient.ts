import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Test voltage (peak or d.c.) by the transient that must be stood: the first of three, of which the greatest counts. */
export const strengthTransient = defineTable({
  id: 'iec-62368-1/2018/strength-transient',
  title: 'Electric strength for the required withstand voltage',
  source: cite('iec-62368-1', 'table 25', 'secondary', {
    alsoBy: ['an open magnetics library, data block of IEC 62368-1: all 18 cells agree'],
  }),
  lookUp: 'first row that covers',
  key: { name: 'required withstand voltage', unit: 'V peak', si: 'V', factor: 1 },
  columns: { basic: { unit: 'V peak', si: 'V', factor: 1 }, reinforced: { unit: 'V peak', si: 'V', factor: 1 } },
  rows: [
    [330, 330, 500],
    [500, 500, 800],
    [800, 800, 1500],
    [1500, 1500, 2500],
    [2500, 2500, 4000],
    [4000, 4000, 6000],
    [6000, 6000, 8000],
    [8000, 8000, 12000],
    [12000, 12000, 18000],
  ],
});
