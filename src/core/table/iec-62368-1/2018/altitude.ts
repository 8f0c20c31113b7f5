import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Factor on clearances (never on creepage) by altitude. Linear between rows, 1 up to 2000 m. */
export const altitude = defineTable({
  id: 'iec-62368-1/2018/altitude',
  title: 'Multiplier of clearances by altitude',
  source: cite('iec-62368-1', 'table 16', 'secondary', {
    alsoBy: ['an open magnetics library, data block of IEC 62368-1', 'IEC 60664-1 table A.2, which goes on above 5000 m'],
  }),
  lookUp: 'linear between rows',
  key: { name: 'altitude', unit: 'm', si: 'm', factor: 1 },
  columns: { factor: { unit: '1', si: '1', factor: 1 } },
  rows: [
    [0, 1],
    [2000, 1],
    [3000, 1.14],
    [4000, 1.29],
    [5000, 1.48],
  ],
});
