import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Factor on clearances above 30 kHz by pollution degree. */
export const highFrequencyDegree = defineTable({
  id: 'iec-62368-1/2018/high-frequency-degree',
  title: 'Factor on clearances above 30 kHz by pollution degree',
  source: cite('iec-62368-1', 'table 11, footnote', 'secondary', {
    alsoBy: ['a translated text of table 11', 'an open magnetics library, insulation logic'],
  }),
  lookUp: 'exact key',
  key: { name: 'pollution degree', unit: '', si: 'word', factor: 1 },
  columns: { factor: { unit: '1', si: '1', factor: 1 } },
  rows: [
    ['1', 0.8],
    ['2', 1],
    ['3', 1.4],
  ],
});
