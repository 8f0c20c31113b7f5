import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Comparative tracking index that a laminate is sold with, at least, where nothing is printed on it. Only kinds for which a sheet was read. */
export const tracking = defineTable({
  id: 'laminate-makers/2026/tracking',
  title: 'Least tracking index of laminates',
  source: cite('laminate-makers', 'comparative tracking index of ordinary grades', 'secondary', {
    alsoBy: ['a listing of usual American material: performance level 2, an index of 250 to 400'],
  }),
  lookUp: 'exact key',
  key: { name: 'laminate', unit: '', si: 'word', factor: 1 },
  columns: { least: { unit: 'V', si: '1', factor: 1 } },
  rows: [['fr4', 175]],
});
