import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Least comparative tracking index of each material group. The first row that the index reaches, from the top, is its group; the creepage of both thirds is one. */
export const materialGroup = defineTable({
  id: 'iec-62368-1/2018/material-group',
  title: 'Material groups by comparative tracking index',
  source: cite('iec-62368-1', 'clause 5.4.3.3; the same in IEC 60664-1 clause 4.8.1.3', 'secondary', {
    alsoBy: ['a terminal maker, technical section on tracking groups'],
  }),
  lookUp: 'exact key',
  key: { name: 'material group', unit: '', si: 'word', factor: 1 },
  columns: { leastCti: { unit: 'V', si: '1', factor: 1 } },
  rows: [
    ['I', 600],
    ['II', 400],
    ['IIIa', 175],
    ['IIIb', 100],
  ],
});
