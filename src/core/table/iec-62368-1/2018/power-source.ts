import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Power that a source may feed into a fault, and after how long it is read. Above the second it is a source of the third class. */
export const powerSource = defineTable({
  id: 'iec-62368-1/2018/power-source',
  title: 'Classes of power sources',
  source: cite('iec-62368-1', 'clause 6.2.2', 'secondary', {
    alsoBy: ['a test laboratory, questions and answers: 15 W after 3 s', 'published test-report forms: 100 W, read after 5 s'],
  }),
  lookUp: 'exact key',
  key: { name: 'class', unit: '', si: 'word', factor: 1 },
  columns: { power: { unit: 'W', si: 'W', factor: 1 }, after: { unit: 's', si: 's', factor: 1 } },
  rows: [
    ['first', 15, 3],
    ['second', 100, 5],
  ],
});
